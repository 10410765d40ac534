"""Words that tell of places: what stands before one, and the kinds of places that scenes are set in."""

from collections.abc import Mapping

from afterdraft.reading.place import Sign

SIGNS: Mapping[str, Sign] = {
    **dict.fromkeys(("in", "at", "inside", "within", "on", "near", "outside", "aboard", "beside", "behind"), "in"),
    **dict.fromkeys(("to", "into", "towards", "toward", "reached", "entered", "for", "through", "round"), "to"),
    **dict.fromkeys(("reach", "enter", "reaching", "entering", "up", "down", "across", "along", "upon"), "to"),
    **dict.fromkeys(("from", "left", "leaving", "leave", "beyond", "off"), "from"),
}
DETERMINERS = frozenset({"the", "a", "an", "his", "her", "their", "my", "our", "your", "this", "that", "its"})
_KINDS = (
    "abbey alley ante-room attic bakery ballroom balcony bar barn barrack barracks basement bathroom beach "
    "bedchamber bedroom boathouse boat-house bridge cabin cafe cafeteria camp canteen carriage castle cathedral "
    "cave cell cellar cemetery chamber chapel church churchyard classroom cliff cloister club coach-house "
    "conservatory corridor cottage court courthouse courtroom courtyard cowshed dairy deck dining-room dock "
    "dormitory drawing-room dressing-room embankment factory farm farmhouse farmyard ferry field flat forest forge "
    "foundry gallery garage garden garret graveyard greenhouse hall hallway harbour hospital hotel house hut inn "
    "island jetty kitchen laboratory landing lane larder laundry library lighthouse lobby lodge lodgings loft "
    "lounge market market-place meadow mill mine monastery morgue museum music-room nursery office orchard palace "
    "pantry park parlour parsonage passage pavement pier platform playground pool porch prison pub quay quarry "
    "rectory refectory restaurant river road room rooms saloon school schoolhouse schoolroom scullery shed ship "
    "shop shore sitting-room smithy stable stables stairs staircase station street studio study summer-house "
    "surgery tavern temple tent terrace theatre tower town train tunnel vault verandah vestibule vestry vicarage "
    "villa village vineyard waiting-room ward warehouse wharf wood woods workshop yard "
)
KINDS = frozenset(_KINDS.split())
