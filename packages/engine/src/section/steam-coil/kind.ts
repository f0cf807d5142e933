import { inBothUnits } from "../both-units.ts";
import { compareDeclaredSteam } from "../coil/declared.ts";
import { airSideWorking } from "../coil/figures.ts";
import { coilLosses } from "../coil/loss.ts";
import { steamCoilBuild } from "../coil/order.ts";
import { bandTable } from "../coil/rivals.ts";
import { steamFigureLines, steamSideWorking } from "../coil/steam-figures.ts";
import { heatingHeld, steamBand, steamCoilNotes } from "../coil/steam-notes.ts";
import { defineKind, type Note } from "../contract.ts";
import { coilSound } from "../passing-sound.ts";
import { prepareSteamCoil, type SteamCoilDesign, steamCoilSectionFields } from "./design.ts";
import { steamCoilParts } from "./parts.ts";
import { drawSteamCoil } from "./picture.ts";
import { completeSteamCoil, createSteamCoilRating, rateSteamCoil, type SteamCoilRating } from "./rate.ts";

/** A heating coil on steam with distributing tubes, on a modulating or a two-position valve. */
export const steamCoil = defineKind({
  name: "steam coil",
  role: "heating",
  meaning: "Finned coil with steam-distributing tubes; its valve modulates or opens and shuts",
  fields: steamCoilSectionFields,
  prepare: prepareSteamCoil,
  createRating: createSteamCoilRating,
  rate: rateSteamCoil,
  complete: completeSteamCoil,
  layout: (design) => ({ length: design.block.length, outside: 0 }),
  parts: steamCoilParts,
  picture: drawSteamCoil,
  sound: coilSound,
  losses: coilLosses,
  orderBy: ["capacity", "steamGaugePressure", "condensate", "trapCapacity", "leavingDryBulb", "totalPressureLoss"],
  orderBuild: steamCoilBuild,
  figures: steamFigureLines,
  working: [
    ...steamSideWorking<SteamCoilDesign, SteamCoilRating>(),
    ...airSideWorking<SteamCoilDesign, SteamCoilRating>(),
  ],
  workingTables: (design, rating) => {
    const band = steamBand(design.block, rating.entering.dryAirFlow / design.block.stacked, rating);
    return band === undefined ? [] : [bandTable(band)];
  },
  shortfalls: (_, rating, at) => {
    const wanted = at.operation.heatingLeaving;
    if (wanted === undefined || rating.leavingDryBulb >= wanted - heatingHeld) return [];
    return [{ what: "dry bulb behind the steam coil", quantity: "temperature", wanted, got: rating.leavingDryBulb }];
  },
  declared: (design, rating, at) => compareDeclaredSteam(design, rating, at.condition.utilities.steam?.pressure),
  notes: (design, rating, at) => {
    const airFlow = rating.entering.dryAirFlow / design.block.stacked;
    const notes: Note[] = steamCoilNotes(design, airFlow, rating, at.operation.fansRunning);
    const over = rating.leavingDryBulb - (at.operation.heatingLeaving ?? Number.POSITIVE_INFINITY);
    if (design.control === "two-position valve" && design.opensBelow < 0) {
      notes.push({
        what: `the valve opens below ${inBothUnits(design.opensBelow, "temperature")} only: from there to ${inBothUnits(0, "temperature")} freezing air meets a coil without steam`,
        weight: "caution",
        source: "steam-coil-guide",
      });
    }
    if (design.control === "two-position valve" && over > heatingHeld) {
      notes.push({
        what: `a two-position valve heats the air ${inBothUnits(over, "temperatureDifference")} above what is wanted`,
        weight: "information",
      });
    }
    return notes;
  },
});
