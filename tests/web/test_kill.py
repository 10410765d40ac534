"""The whole program killed in the middle of saves: every save it answered is there when it is started again."""

import random
import re
import time
from pathlib import Path
from threading import Thread

import httpx2
import pytest

from tests.server import Server, running

KILLS = 6
FIELDS = ("summary", "comes_in", "leaves", "needed_for")


class Typist(Thread):
    """Saves one field after another as fast as the server answers; keeps what was answered and what was only sent."""

    def __init__(self, server: Server, path: str, text: str) -> None:
        super().__init__()
        self._client = server.client()
        self._path = path
        self._text = text
        self.sent: dict[str, str] = {}
        self.answered: dict[str, str] = {}
        self.flying = False

    def run(self) -> None:
        with self._client as client:
            for number in range(100_000):
                field = FIELDS[number % len(FIELDS)]
                self.sent[field] = f"{self._text} {number}"
                self.flying = True
                try:
                    answer = client.post(f"{self._path}/{field}", data=self._form(number, field))
                except httpx2.HTTPError:
                    return
                self.flying = False
                assert answer.status_code == 204, answer.text
                self.answered[field] = self.sent[field]

    def wait_for_an_answer(self) -> None:
        """However slow the machine is: what was never answered cannot be lost."""
        while self.is_alive() and not self.answered:
            time.sleep(0.01)

    def _form(self, number: int, field: str) -> dict[str, str]:
        return {
            "text": self.sent[field],
            "revision": "100000000",  # more than it will ever be: this window knows everything
            "client": f"typist {self._text}",
            "sequence": str(number),
            "done": "0",
        }


@pytest.mark.slow
def test_no_answered_save_is_lost_when_the_program_is_killed(home: Path) -> None:
    chance = random.Random(20)  # noqa: S311 moments, not secrets
    flying = 0
    with running(home, forked=True) as server, server.client() as client:
        place = str(client.post("/demo").headers["location"])
    for round_number in range(KILLS):
        with running(home, forked=True) as server:
            typist = Typist(server, _card_path(server, place), f"round {round_number}")
            typist.start()
            typist.wait_for_an_answer()
            time.sleep(chance.uniform(0.05, 0.4))
            flying += typist.flying
            server.kill()
            typist.join()
        assert typist.answered, "the kill came before the first answer"
        with running(home, forked=True) as again:
            found = _fields(again, place)
        for field, answered in typist.answered.items():
            # what was under way when the program was killed may have been kept as well
            assert found[field] in (answered, typist.sent[field]), (field, found[field], answered)
    assert flying >= KILLS / 2


def _card_path(server: Server, place: str) -> str:
    found = re.search(r'action="(/books/\w+/fields/card/\w+)"', _scene(server, place))
    assert found
    return found[1]


def _fields(server: Server, place: str) -> dict[str, str]:
    return dict(re.findall(r'data-field="(\w+)" data-saved="([^"]*)"', _scene(server, place)))


def _scene(server: Server, place: str) -> str:
    with server.client() as client:
        return client.get(place, follow_redirects=True).text
