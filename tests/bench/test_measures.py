"""The bench of measures: LitBank's words become prose and find back; labels lie where their novels have words."""

import json

import numpy as np
import pytest

from bench import corpus
from bench.measures import learn
from bench.measures.litbank import prose
from bench.measures.owners import LABELS
from tests.support import need


def test_words_become_prose_and_each_is_found_back() -> None:
    text = '" Do n\'t , " said Mr. Pike ; " it \'s a boat -- mine . " " Why ? " He rose .'
    words = text.split()
    paragraphs, places = prose(words, [(0, 18), (18, 22), (22, 25)])
    assert paragraphs == ('"Don\'t," said Mr. Pike; "it\'s a boat--mine."', '"Why?" He rose.')
    assert [paragraphs[number][start:end] for number, start, end in places] == words


def test_weights_are_where_the_slope_is_nothing() -> None:
    """Logistic regression with a ridge: at the best weights the errors of each sign balance the ridge."""
    rows = [[0, 1], [0, 1], [0, 1, 2], [0, 2], [0, 2], [0]]
    right = np.array([1.0, 1.0, 0.0, 0.0, 1.0, 0.0])
    table = learn.Table(
        np.array([row for row, signs in enumerate(rows) for _ in signs]),
        np.array([sign for signs in rows for sign in signs]),
        right,
        np.zeros(len(rows), dtype=np.int64),
    )
    weights = learn.fitted(table, 2)
    wrong = 1 / (1 + np.exp(-np.array([weights[signs].sum() for signs in rows]))) - right
    slope = [sum(w for w, signs in zip(wrong, rows, strict=True) if sign in signs) for sign in range(3)]
    assert np.array(slope) + np.array([0.0, *weights[1:]]) == pytest.approx(np.zeros(3), abs=0.02)


@pytest.mark.corpus
def test_labels_lie_where_their_novels_speak_of_eyes_hair_or_beards() -> None:
    need(corpus.paths(), "the corpus folder beside the checkout")
    labels = json.loads(LABELS.read_text("utf-8"))
    paths = {corpus.slug(path): path for path in corpus.paths()}
    for slug, rows in labels.items():
        chapters = corpus.novel(paths[slug]).chapters
        for chapter, scene, paragraph, start, end, _ in rows:
            words = chapters[chapter].scenes[scene][paragraph].replace("*", "")[start:end].lower()
            assert any(part in words for part in ("eye", "hair", "beard", "moustache", "mustache", "whisker")), words
