// The Cards screen: drag, keys, several at once, nearer and further. Each works on the same table.
import { byKey } from "./cards_keys.js";
import { byPointer } from "./cards_drag.js";
import { choosing } from "./cards_choose.js";
import { filtering } from "./cards_filter.js";
import { menus } from "./cards_menus.js";
import { Table } from "./cards_table.js";
import { zooming } from "./cards_zoom.js";

export function cards() {
  const element = document.querySelector(".table[data-zoom]");
  if (!element) return;
  zooming(element);
  filtering();
  if (!("table" in element.dataset)) return; // only looked at
  menus(element);
  const table = new Table(element);
  const chosen = choosing(table);
  byPointer(table, chosen);
  byKey(table, chosen);
}
