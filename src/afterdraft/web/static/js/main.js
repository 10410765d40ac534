// Every page works by plain links and forms; these make it pleasant. One module a behaviour.
import { autosave } from "./autosave.js";
import { bring } from "./bring.js";
import { cards } from "./cards.js";
import { foreEdge } from "./fore_edge.js";
import { fresh } from "./fresh.js";
import { keys } from "./keys.js";
import { lines } from "./lines.js";
import { messages } from "./messages.js";
import { noteDialog } from "./note_dialog.js";
import { place } from "./place.js";
import { rows } from "./rows.js";
import { times } from "./times.js";

messages();
place();
times();
foreEdge();
noteDialog();
rows();
lines();
bring();
cards();
const saving = autosave();
fresh(saving);
keys();
