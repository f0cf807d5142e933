import { readdirSync, readFileSync } from "node:fs";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { sizeUnit } from "@oncethrough/engine/sizing/size-unit";

// The suites run bundled, from the project's root.
const textsOf = (folder: string) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((path) => ({ path, text: readFileSync(`${folder}/${path}`, "utf8") }));

const catalogue = readCatalogue(textsOf("catalogue"));
const profile = readProfiles(textsOf("profiles"), rules).byName.get("common practice")!;
const duties = [
  { name: "harbour-aquarium", text: readFileSync("examples/duties/harbour-aquarium.yaml", "utf8") },
  ...["marine-biology-wing", "high-country-soils-laboratory", "large-vivarium"].map((name) => {
    const text = readFileSync(`examples/${name}.yaml`, "utf8");
    return { name, text: text.slice(0, text.search(/^unit:/m)) };
  }),
];

const plain = duties[1]!.text;
/** Duties that no unit holds, each answered with duties that do. */
const contradictions = [
  { name: "leaving air below the chilled water", text: plain.replace(/supply: 44 °F/, "supply: 58 °F") },
  { name: "airflow that cannot fit the limits", text: plain.replace(/design: [\d,]+ cfm/, "design: 90000 cfm") },
];
for (const { name, text } of contradictions) if (text === plain) throw new Error(`${name}: the duty was not changed`);

export const suite = {
  title: "sizing from a duty",
  samples: 5,
  tasks: [...duties, ...contradictions].map(({ name, text }) => ({
    name,
    run: () => void sizeUnit(text, catalogue, profile),
  })),
};
