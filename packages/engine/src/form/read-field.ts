import { isMap, isSeq, type YAMLMap, type YAMLSeq } from "yaml";
import type { Field, Fields, GroupCheck, GroupField, ListField, VariantField } from "./field.ts";
import { textKey } from "./key.ts";
import { membersOf } from "./members.ts";
import { nearestName } from "./nearest-name.ts";
import { itemPath, memberPath } from "./path.ts";
import { allowedByScalar, listed, readScalar, type ScalarField } from "./read-scalar.ts";
import {
  isEmpty,
  type Reading,
  remember,
  report,
  resolved,
  type Spot,
  scalarText,
  typedText,
  unsound,
  type Written,
  whatStands,
} from "./reading.ts";

type AnyVariant = VariantField<Record<string, Fields>>;

const mostVisited = 200_000;

/** Reads what is written for a field, or gives `unsound` with the problem reported. */
export function readField(reading: Reading, written: Written, field: Field, spot: Spot): unknown {
  reading.visited += 1;
  if (reading.visited > mostVisited) return tooMuch(reading, spot);
  const node = resolved(reading, written);
  if (node === undefined) {
    const typed = typedText(reading, written);
    return report(
      reading,
      at(spot, written),
      typed,
      `"${typed}" refers to nothing`,
      "an anchor that stands further up",
    );
  }
  remember(reading, spot.path, written, spot.offset);
  switch (field.type) {
    case "group":
      return readGroup(reading, node, field, spot);
    case "list":
      return readList(reading, node, field, spot);
    case "variant":
      return readVariant(reading, node, field, spot);
    default:
      return readSingle(reading, node, written, field, at(spot, written));
  }
}

function tooMuch(reading: Reading, spot: Spot): typeof unsound {
  if (reading.visited > mostVisited + 1) return unsound;
  return report(reading, spot, "", "the text has too many values", `at most ${mostVisited}`);
}

/** The spot of a value itself, where one is written. */
function at(spot: Spot, node: Written): Spot {
  return node === null || isEmpty(node) ? spot : { ...spot, offset: node.range[0] };
}

function readSingle(reading: Reading, node: Written, written: Written, field: ScalarField, spot: Spot): unknown {
  const typed = scalarText(node);
  if (typed === undefined || isEmpty(node)) {
    return report(reading, spot, typedText(reading, node), whatStands(node), allowedByScalar(reading, field));
  }
  const read = readScalar(reading, typed, field, spot);
  if (read.unit !== undefined) remember(reading, spot.path, written, spot.offset, read.unit);
  return read.value;
}

/** Reads a group; the text as a whole is one. */
export function readGroup(reading: Reading, node: Written, field: GroupField<Fields>, spot: Spot): unknown {
  if (!isEmpty(node) && !isMap(node)) {
    const names = listed(Object.keys(field.fields).map(textKey));
    return report(reading, at(spot, node), typedText(reading, node), whatStands(node), `the names ${names}`);
  }
  const map = isMap(node) ? (node as YAMLMap.Parsed) : undefined;
  return readMembers(reading, map, field.fields, field.check, spot, {});
}

/** Reads every field of a group and, when each is sound, asks the group's own check. */
function readMembers(
  reading: Reading,
  map: YAMLMap.Parsed | undefined,
  fields: Fields,
  check: GroupCheck | undefined,
  spot: Spot,
  values: Record<string, unknown>,
): unknown {
  const known = [...Object.keys(values), ...Object.keys(fields).map(textKey)];
  const members = membersOf(reading, map, known, spot);
  let sound = members.sound;
  for (const [name, field] of Object.entries(fields)) {
    const key = textKey(name);
    const member = members.byName.get(key);
    const here = { path: memberPath(spot.path, name), field: key, offset: member?.key.range[0] ?? spot.offset };
    let value: unknown = unsound;
    if (member !== undefined) value = readField(reading, member.value, field, here);
    else if (!members.meant.has(key)) value = readMissing(reading, field, here);
    values[name] = value;
    if (value === unsound) sound = false;
  }
  if (!sound) return unsound;
  return check === undefined || passes(reading, values, check, spot) ? values : unsound;
}

function passes(reading: Reading, values: Record<string, unknown>, check: GroupCheck, spot: Spot): boolean {
  let sound = true;
  check(values, (member, problem, allowed) => {
    sound = false;
    const path = member === undefined ? spot.path : memberPath(spot.path, member);
    const field = member === undefined ? spot.field : textKey(member);
    const place = member === undefined ? undefined : reading.places.get(path);
    const here = { path, field, offset: place?.start ?? spot.offset };
    report(reading, here, place?.text ?? "", problem, allowed);
  });
  return sound;
}

/** What a field is worth when nothing is written for it. */
function readMissing(reading: Reading, field: Field, spot: Spot): unknown {
  if (field.optional === true) return undefined;
  if (mayBeLeftOut(field)) {
    if (field.type === "group") return readMembers(reading, undefined, field.fields, field.check, spot, {});
    return readDefault(reading, field, spot);
  }
  return report(reading, spot, "", `"${spot.field}" is missing`, allowedFor(reading, field));
}

/** True when a text is complete without the field. */
export function mayBeLeftOut(field: Field): boolean {
  if (field.optional === true) return true;
  switch (field.type) {
    case "group":
      return Object.values(field.fields).every(mayBeLeftOut);
    case "list":
      return (field.fewest ?? 0) === 0;
    case "variant":
      return false;
    default:
      return field.default !== undefined;
  }
}

function readDefault(reading: Reading, field: Field, spot: Spot): unknown {
  if (field.type === "group" || field.type === "variant") return unsound;
  if (field.type === "list") {
    reading.defaults.push({ path: spot.path, value: "none", meaning: field.meaning });
    return [];
  }
  const typed = typeof field.default === "boolean" ? (field.default ? "yes" : "no") : String(field.default);
  reading.defaults.push({ path: spot.path, value: typed, meaning: field.meaning });
  return readScalar(reading, typed, field, spot).value;
}

function allowedFor(reading: Reading, field: Field): string {
  switch (field.type) {
    case "group": {
      const needed = Object.entries(field.fields).filter(([, member]) => !mayBeLeftOut(member));
      return needed.length === 0 ? field.meaning : `a group with ${listed(needed.map(([name]) => textKey(name)))}`;
    }
    case "list":
      return `a list of at least ${field.fewest ?? 0}: ${field.meaning}`;
    case "variant":
      return `a group that begins with kind: ${listed(Object.keys(field.variants).map(textKey))}`;
    default:
      return allowedByScalar(reading, field);
  }
}

function readList(reading: Reading, node: Written, field: ListField<Field>, spot: Spot): unknown {
  if (!isEmpty(node) && !isSeq(node)) {
    return report(
      reading,
      at(spot, node),
      typedText(reading, node),
      whatStands(node),
      "a list: a dash before each item",
    );
  }
  const items = isSeq(node) ? (node as YAMLSeq.Parsed).items : [];
  const { fewest = 0, most = Number.POSITIVE_INFINITY } = field;
  let sound = true;
  const values = items.map((item, index) => {
    const path = itemPath(spot.path, index);
    const offset = item?.range?.[0] ?? spot.offset;
    const value = readField(reading, item as Written, field.item, {
      path,
      field: `${spot.field} ${index + 1}`,
      offset,
    });
    if (value === unsound) sound = false;
    return value;
  });
  if (items.length < fewest || items.length > most) {
    const allowed = most === Number.POSITIVE_INFINITY ? `at least ${fewest}` : `${fewest} to ${most}`;
    return report(reading, spot, "", `the list has ${items.length} items`, `${allowed} items`);
  }
  return sound ? values : unsound;
}

function readVariant(reading: Reading, node: Written, field: AnyVariant, spot: Spot): unknown {
  const kinds = Object.keys(field.variants).map(textKey);
  if (!isMap(node)) {
    return report(reading, at(spot, node), typedText(reading, node), whatStands(node), allowedFor(reading, field));
  }
  const map = node as YAMLMap.Parsed;
  const pair = map.items.find((each) => scalarText(each.key as Written) === "kind");
  const typed = scalarText((pair?.value ?? null) as Written);
  const here = {
    path: memberPath(spot.path, "kind"),
    field: "kind",
    offset: pair?.key.range[0] ?? at(spot, node).offset,
  };
  if (pair === undefined) return report(reading, here, "", `"kind" is missing`, listed(kinds));
  const value = pair.value as Written;
  if (typed === undefined || isEmpty(value)) {
    return report(reading, here, typedText(reading, value), whatStands(value), listed(kinds));
  }
  remember(reading, here.path, value, here.offset);
  const kind = Object.keys(field.variants).find((each) => textKey(each) === typed);
  const fields = kind === undefined ? undefined : field.variants[kind];
  if (kind === undefined || fields === undefined) {
    return report(
      reading,
      at(here, value),
      typed,
      `"${typed}" is not a kind known here`,
      listed(kinds),
      nearestName(typed, kinds),
    );
  }
  const named = { ...spot, field: `${spot.field} (${typed})`, offset: at(spot, node).offset };
  return readMembers(reading, map, fields, field.checks?.[kind], named, { kind });
}
