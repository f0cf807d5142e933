/**
 * Every command and option of the program, once: the parser, the help and docs/command-line.md are made from this table.
 */
export interface CommandLine {
  readonly name: CommandName;
  /** One sentence, lower case, no full stop. */
  readonly meaning: string;
  /** What it prints and how, a few sentences. */
  readonly details: string;
  readonly operands: readonly Operand[];
  readonly options: readonly OptionLine[];
  readonly examples: readonly { readonly line: string; readonly meaning: string }[];
}

/** What may follow the program's name. */
export type CommandName =
  | "rate"
  | "design"
  | "fan"
  | "sound"
  | "import-fan"
  | "dampers"
  | "weigh"
  | "draw"
  | "check"
  | "takeoff"
  | "price"
  | "weather"
  | "year"
  | "air"
  | "coil"
  | "fit-surface"
  | "read"
  | "schema"
  | "serve";

/** A word that a command takes besides options. */
export interface Operand {
  readonly name: string;
  readonly meaning: string;
  readonly optional?: true;
  /** More than one may be given. */
  readonly several?: true;
}

/** An option and, where it takes one, its value. */
export interface OptionLine {
  /** As typed, with the name of the value in angle brackets: `--units <system>`. */
  readonly flags: string;
  readonly meaning: string;
  readonly choices?: readonly string[];
  readonly default?: string;
}

/** The program as it is typed. */
export const programName = "oncethrough";
/** The version that `--version` prints. */
export const programVersion = "0.1.0";
/** What the program is for, in a line. */
export const programMeaning =
  "outside-air units built to order for laboratories: one job file in, the solved machine out";

/** Names of the published schemas. */
export const schemaNames = [
  "job",
  "rate",
  "design",
  "fan",
  "import-fan",
  "fit-surface",
  "sound",
  "dampers",
  "weigh",
  "draw",
  "check",
  "takeoff",
  "price",
  "weather",
  "year",
  "air",
  "coil",
  "coil-alternatives",
  "read",
] as const;

const units: OptionLine = {
  flags: "--units <system>",
  meaning: "units of what is printed: inch-pound or SI",
  choices: ["ip", "si"],
  default: "ip",
};

const shop: OptionLine = {
  flags: "--shop <folder>",
  meaning: "the shop's own books: prices.yaml, rates.yaml, stock.yaml; the shipped ones stand in for what is not there",
};

const catalogue: OptionLine = {
  flags: "--catalogue <folder>",
  meaning: "the shop's own component records, laid over the generic ones",
};

function json(name: string): OptionLine {
  return { flags: "--json", meaning: `print JSON in SI units, as schemas/${name}.schema.json describes` };
}

const job: Operand = { name: "job", meaning: "the job file (YAML), or - for standard input" };

/** The commands, in the order in which the help lists them. */
export const commands: readonly CommandLine[] = [
  {
    name: "rate",
    meaning: "solve the unit of a job and print its stations",
    details:
      "Without --condition every condition of the job is solved and listed in a line, and the one that decides the design is printed in full: stations, main figures of the sections, fan point, the most air that can come, what is not met, notes.",
    operands: [job],
    options: [
      { flags: "--condition <key>", meaning: "print this condition in full; the list without it shows the keys" },
      { flags: "--all", meaning: "print all figures of every section, and not the main ones alone" },
      { flags: "--working <section>", meaning: "print the arithmetic behind the figures of a section" },
      {
        flags: "--ledger",
        meaning: "print every loss of pressure with its area, velocity, density and source, up to the fan's pressure",
      },
      units,
      json("rate"),
      { flags: "--strict", meaning: "end with exit code 1 when something asked is not met" },
      catalogue,
    ],
    examples: [
      { line: "rate examples/marine-biology-wing.yaml", meaning: "all conditions, the deciding one in full" },
      { line: "rate job.yaml --condition winter-1 --units si", meaning: "winter with filters at change-out, in SI" },
      { line: 'rate job.yaml --working "cooling coil"', meaning: "how the figures of the coil came about" },
      { line: "rate job.yaml --condition wet-bulb-day-1 --ledger", meaning: "what the fan's pressure is spent on" },
    ],
  },
  {
    name: "design",
    meaning: "size a whole unit from a duty, and say why each choice was made",
    details:
      "The duty file is a job file in which the unit is left out, or given in part: what it fixes stays. Sections, cross-section, hood, louver, dampers and blade angles, filters, coils, fan, motor and drive, rail and discharge are chosen, and the whole unit is solved between until nothing changes. Tells each choice with its number and limit, and what nobody said and had to be assumed, what moves price or risk most first. A duty that contradicts itself is answered with the contradiction and the nearest duties that work. Without --output the job is printed, and what is said of it goes to the error stream.",
    operands: [{ name: "duty", meaning: "the duty file (YAML), or - for standard input" }],
    options: [
      {
        flags: "-o, --output <file>",
        meaning: "write the job to this file; an older one stays beside it as .previous",
      },
      { flags: "--profile <name>", meaning: "size by this owner profile instead of the duty's" },
      { flags: "--profiles <folder>", meaning: "owner profiles of your own, besides the shipped ones" },
      json("design"),
      catalogue,
    ],
    examples: [
      { line: "design examples/duties/harbour-aquarium.yaml -o job.yaml", meaning: "a unit for a duty" },
      { line: "design duty.yaml --json", meaning: "job, choices and open questions for another program" },
    ],
  },
  {
    name: "fan",
    meaning: "the fan of a job at every condition, and other ways to build it",
    details:
      "Prints the fan as it is built, its point at every condition (airflow, pressure, power, distance to the peak and to the smallest steady flow, motor load), and at one condition all figures, octave bands of sound power and a proposal for the electrical connection. The condition is the wet-bulb day with filters at change-out unless --condition says otherwise.",
    operands: [job],
    options: [
      { flags: "--condition <key>", meaning: "tell all of it at this condition" },
      {
        flags: "--alternatives",
        meaning:
          "choose among all lines, standard diameters, counts and drives that meet the point and fit the cabinet",
      },
      { flags: "--working", meaning: "print the arithmetic behind the figures" },
      {
        flags: "--svg <file>",
        meaning: "write the fan chart: pressure, power and efficiency, system curves, the points of all conditions",
      },
      units,
      json("fan"),
      catalogue,
    ],
    examples: [
      { line: "fan examples/marine-biology-wing.yaml", meaning: "the fan point at every condition" },
      { line: "fan job.yaml --alternatives", meaning: "what else would do, least power first" },
      { line: "fan job.yaml --svg fan.svg", meaning: "the fan chart as a picture" },
    ],
  },
  {
    name: "dampers",
    meaning: "the dampers of a job: angles to set, share elsewhere, leakage",
    details:
      "Prints every damper as it stands at a condition, with its authority; what it would leak and ask of its actuator at the pressure that it really sees when closed; what still flows with the fan stopped; blade angles at which hand-set dampers hold the share of outside air; and the share that results at other flows, filter states and winds. The condition is the wet-bulb day with filters half loaded unless --condition says otherwise.",
    operands: [job],
    options: [{ flags: "--condition <key>", meaning: "tell it at this condition" }, units, json("dampers"), catalogue],
    examples: [
      { line: "dampers examples/marine-biology-wing.yaml", meaning: "angles to lock the blades at" },
      { line: "dampers job.yaml --condition winter-1 --units si", meaning: "in winter with filters at change-out" },
    ],
  },
  {
    name: "weigh",
    meaning: "masses, shipping, lifting, traps, panels and springs of a job",
    details:
      "Prints masses by section (dry, and with the water and dust that it carries when it runs), the centre of gravity, the pieces in which it ships within the limits of the duty, loads of lifting lugs, slings and corners, bending of the base rail, traps with the rail that they need, deflection of panels at the worst wall pressure and at shut-off, loads of springs, heat through the walls and where they would sweat, and leakage in the forms that owners use. Every condition is solved for it. Lifting is for qualified riggers under local codes; the figures are theirs to check.",
    operands: [job],
    options: [
      { flags: "--parts", meaning: "list every part with material, place, size and mass" },
      units,
      json("weigh"),
      catalogue,
    ],
    examples: [
      { line: "weigh examples/large-vivarium.yaml", meaning: "masses, pieces, lifting, traps" },
      { line: "weigh job.yaml --parts --json", meaning: "the whole tree of parts, for another program" },
    ],
  },
  {
    name: "draw",
    meaning: "general arrangement drawings of a job",
    details:
      "Draws the unit to scale from its tree of parts and writes SVG, to a file or to standard output. With --json the display list is printed, in millimetres, and with --solids the parts as boxes, cylinders and prisms for a viewer.",
    operands: [job],
    options: [
      { flags: "--view <view>", meaning: "what is drawn", choices: ["side", "plan", "end"], default: "side" },
      { flags: "--svg <file>", meaning: "write the picture to this file instead of standard output" },
      { flags: "--width <points>", meaning: "width of the picture", default: "1100" },
      { flags: "--solids", meaning: "with --json: add the parts as solids" },
      units,
      json("draw"),
      catalogue,
    ],
    examples: [
      { line: "draw job.yaml --view side --svg side.svg", meaning: "the side elevation" },
      { line: "draw job.yaml --json --solids", meaning: "the display list and the solids, for another program" },
    ],
  },
  {
    name: "check",
    meaning: "the unit of a job judged by an owner's rules",
    details:
      "Solves the unit at every condition and at the largest flow that can occur (clean filters while the fan turns as fast as the dirtiest asked), weighs it, and judges it by every rule of the owner profile that the job or --profile names. Findings stand by section, the smallest margin first, with value, limit, margin, the condition where the margin is smallest, what the rule protects, what mends it, and the source with its certainty. A limit that is only remembered, contested between sources or merely recommended gives advice, unless the profile sets it. The exit code is 1 when a deciding limit is missed and nobody has let it go by name, or when a condition could not be solved. docs/rules.md lists every rule.",
    operands: [job],
    options: [
      { flags: "--profile <name>", meaning: "judge by this owner profile instead of the job's" },
      { flags: "--profiles <folder>", meaning: "owner profiles of your own, besides the shipped ones" },
      { flags: "--all", meaning: "show also what passes with room" },
      {
        flags: "--fixes",
        meaning: "find the cheapest single change of the job that mends each finding, and what it costs",
      },
      { flags: "--fix <rule>", meaning: "write the job with the smallest fix of that rule in it" },
      {
        flags: "-o, --output <file>",
        meaning: "where --fix writes; over the job itself when left out, which stays beside it as .previous",
      },
      shop,
      units,
      json("check"),
      { flags: "--strict", meaning: "end with exit code 1 also when something cannot be told" },
      catalogue,
    ],
    examples: [
      { line: "check examples/marine-biology-wing.yaml", meaning: "what is not met, thin, or cannot be told" },
      { line: 'check job.yaml --profile "strict once-through" --json', meaning: "for another program" },
    ],
  },
  {
    name: "takeoff",
    meaning: "parts, blanks, sheets and bought things of a job",
    details:
      "Prints the parts list by section, the cut list of sheet, how many sheets of the stock book it takes (at least, by area, and in shelves that can be cut with a shear), and what is bought with the data to order it by: size, figures at the hardest condition, the supplier's declared rating where the job holds one. With --csv one of the lists is printed as CSV.",
    operands: [job],
    options: [
      {
        flags: "--csv <list>",
        meaning: "print one list as CSV",
        choices: ["parts", "cuts", "sheets", "bought", "orders"],
      },
      shop,
      units,
      json("takeoff"),
      catalogue,
    ],
    examples: [
      { line: "takeoff examples/marine-biology-wing.yaml", meaning: "all five lists" },
      { line: "takeoff job.yaml --csv cuts > cuts.csv", meaning: "the cut list for the shear" },
    ],
  },
  {
    name: "price",
    meaning: "what the unit of a job costs and is sold for, by section",
    details:
      "Counts material, bought things and hours by the books of the shop, overhead on labour, margin of the price, freight by mass and piece. Money is whole cents; each line is rounded by itself. What has no price is listed and is in no sum; the exit code is then 1. The shipped books are invented, so that there is something to print.",
    operands: [job],
    options: [
      { flags: "--lines", meaning: "print every line of cost" },
      { flags: "--csv", meaning: "print the lines of cost as CSV" },
      shop,
      json("price"),
      catalogue,
    ],
    examples: [
      { line: "price examples/marine-biology-wing.yaml", meaning: "by section, with the shipped books" },
      { line: "price job.yaml --shop books --lines", meaning: "with the shop's own books, line by line" },
    ],
  },
  {
    name: "year",
    meaning: "the unit of a job through every hour of a weather file",
    details:
      "Solves the whole unit with its controls hour by hour, by the schedule of the duty: energy and water with their peaks, cost by the duty's tariffs, hours in which something is missed, freeze exposure of each coil and the time to freeze if heat or fan failed, the smallest margin of each rule and when. Several jobs are told one by one and side by side. Without --weather the year is made up from the design days and says synthetic. An hour that cannot be solved is named, and the exit code is then 1.",
    operands: [{ name: "job", meaning: "job files (YAML), or - for standard input", several: true }],
    options: [
      { flags: "--weather <file>", meaning: "hourly weather, EPW or CSV, as the command weather reads it" },
      { flags: "--csv", meaning: "print the figures of the year as CSV in SI units, jobs side by side" },
      { flags: "--hours", meaning: "print every hour as CSV in SI units" },
      {
        flags: "--svg <folder>",
        meaning: "write pictures: carpets of leaving air, coil load and freeze margin, load duration, states, months",
      },
      {
        flags: "--representative <count>",
        meaning: "choose this many hours that stand for the year, and say how far what they tell is from it",
      },
      {
        flags: "--uncertain <trials>",
        meaning:
          "draw the unit within its tolerances this many times: is the leaving air held, how far may energy be off",
      },
      { flags: "--seed <number>", meaning: "of the trials: the same seed, the same answer", default: "1" },
      {
        flags: "--workers <count>",
        meaning: "threads that share the work, all cores when left out; the answer is the same for any number",
      },
      { flags: "--profile <name>", meaning: "judge by this owner profile instead of the job's" },
      { flags: "--profiles <folder>", meaning: "owner profiles of your own, besides the shipped ones" },
      units,
      json("year"),
      catalogue,
    ],
    examples: [
      { line: "year examples/marine-biology-wing.yaml", meaning: "a first look, on a synthetic year" },
      { line: "year a.yaml b.yaml --weather station.epw", meaning: "two variants on one file, side by side" },
      { line: "year a.yaml --weather station.epw --svg pictures", meaning: "the year in pictures" },
    ],
  },
  {
    name: "weather",
    meaning: "what an hourly weather file holds: extremes, bins, design days",
    details:
      "Reads an EPW file, or CSV with the columns time (year-month-day hour:minute), dry bulb, dew point or relative humidity, perhaps pressure and wind speed, each with its unit in brackets. A whole year in order is needed. Short gaps, dew points above the dry bulb and the like are put right and counted; anything else is refused with the line and the reason. Hours are named by their end, in standard time.",
    operands: [{ name: "file", meaning: "the weather file (EPW or CSV), or - for standard input" }],
    options: [
      { flags: "--svg <file>", meaning: "write a picture: the states of the year on the psychrometric chart" },
      {
        flags: "--altitude <height>",
        meaning: "of the place, for a CSV file without pressures; sea level when left out",
      },
      units,
      json("weather"),
    ],
    examples: [
      { line: "weather station.epw --svg states.svg", meaning: "extremes and bins, and where the year's hours lie" },
      { line: 'weather logger.csv --altitude "1,200 ft" --units si', meaning: "a logger's own year" },
    ],
  },
  {
    name: "import-fan",
    meaning: "make a catalogue record of a shop's own fan test",
    details:
      "The CSV file has one row for each tested point and a header that names its columns: flow, static pressure or total pressure, shaft power, speed, density, each with its unit in brackets. Several speeds are brought together by the fan laws, and how far they scatter is told. Tables that no fan could have done are refused with the row and what is needed; points that stand out are named and kept. The wheel's proportions, classes and masses are those of the record given by --like, to be put right by hand. Without --output the record is printed.",
    operands: [{ name: "file", meaning: "the test table (CSV), or - for standard input" }],
    options: [
      { flags: "--diameter <length>", meaning: 'the wheel that was tested, "30 in"' },
      { flags: "--name <name>", meaning: "name of the record; the file's name when left out" },
      {
        flags: "--like <record>",
        meaning: "fan wheel whose proportions are taken over",
        default: "typical airfoil housed single inlet",
      },
      { flags: "--speed <speed>", meaning: 'speed of all points where the table has no such column, "1180 rpm"' },
      {
        flags: "--density <density>",
        meaning: "air density where the table has no such column; standard air when left out",
      },
      { flags: "-o, --output <file>", meaning: "write the record to this new file" },
      { flags: "--plot <file>", meaning: "write a picture of points and curve (SVG)" },
      units,
      json("import-fan"),
      catalogue,
    ],
    examples: [
      {
        line: 'import-fan test.csv --diameter "30 in" -o catalogue/shop.yaml --plot test.svg',
        meaning: "a record of its own, and a picture to look at",
      },
    ],
  },
  {
    name: "sound",
    meaning: "sound power of a job's unit in octave bands",
    details:
      "Prints A-weighted sound power at the intake, at the discharge, through the casing and at the return opening for every condition, and octave bands with their uncertainty at one, with what each section takes off or makes on the way. The condition is that of the loudest discharge unless --condition says otherwise. Limits of the duty are held against the figures and what they may be off by.",
    operands: [job],
    options: [
      { flags: "--condition <key>", meaning: "tell all of it at this condition" },
      units,
      json("sound"),
      catalogue,
    ],
    examples: [
      { line: "sound examples/marine-biology-wing.yaml", meaning: "octave bands where sound leaves the unit" },
    ],
  },
  {
    name: "air",
    meaning: "states of moist air from two values each",
    details:
      "Give two of the seven values with their units, or a CSV file whose header names columns by the same words, with units in brackets after the name or in each cell. The pressure is that of sea level unless --pressure or --altitude (or such a column) says otherwise. Rows that cannot be answered are reported by row and column; the others are printed.",
    operands: [],
    options: [
      { flags: "--dry-bulb <temperature>", meaning: 'dry-bulb temperature, "95 °F"' },
      { flags: "--wet-bulb <temperature>", meaning: "thermodynamic wet-bulb temperature" },
      { flags: "--dew-point <temperature>", meaning: "dew-point temperature; below 0 °C the frost point" },
      { flags: "--relative-humidity <share>", meaning: 'relative humidity, "50 %"' },
      { flags: "--humidity-ratio <ratio>", meaning: 'vapour per dry air by mass, "80 gr/lb"' },
      { flags: "--enthalpy <enthalpy>", meaning: 'enthalpy per dry air, "41.3 Btu/lb" or "78 kJ/kg"' },
      { flags: "--specific-volume <volume>", meaning: 'volume per dry air by mass, "14.3 ft³/lb"' },
      { flags: "--pressure <pressure>", meaning: 'absolute pressure, "29.92 inHg"' },
      { flags: "--altitude <height>", meaning: 'height above sea level in the standard atmosphere, "6,200 ft"' },
      { flags: "--csv <file>", meaning: "read pairs from a CSV file, or from standard input with -" },
      { flags: "--output <form>", meaning: "form of the answer", choices: ["table", "csv", "json"], default: "table" },
      json("air"),
      { flags: "--ideal", meaning: "add the state by ideal-gas relations, without the enhancement factor, to compare" },
      units,
    ],
    examples: [
      { line: 'air --dry-bulb "95 °F" --wet-bulb "78 °F"', meaning: "one state at sea level" },
      {
        line: 'air --dry-bulb "-10 °F" --relative-humidity "80 %" --altitude "6,200 ft"',
        meaning: "a mountain winter",
      },
      { line: "air --csv pairs.csv --output csv", meaning: "a table of pairs in, a table of states out" },
    ],
  },
  {
    name: "coil",
    meaning: "rate one coil by itself",
    details:
      "The file has three groups, in the words of a job: `coil` (kind and fields of the section), `air` (state, airflow or face velocity, barometric pressure or altitude) and `water` or `steam` (as under utilities). Prints totals, leaving states and the water or steam side.",
    operands: [{ name: "file", meaning: "the coil file (YAML), or - for standard input" }],
    options: [
      { flags: "--working", meaning: "print the arithmetic behind the figures" },
      {
        flags: "--alternatives",
        meaning:
          "instead of the rating, every combination of surface, rows, fins, circuits and turbulators that does the duty: the leaving air of the file, or what this coil reaches, within the file's group `limits`",
      },
      {
        flags: "--sort <figure>",
        meaning: "alternatives by price index, air or water pressure drop, or rows; least first",
        choices: ["price", "air", "water", "rows"],
        default: "price",
      },
      { flags: "--most <number>", meaning: "how many alternatives are listed", default: "20" },
      { flags: "--csv", meaning: "print the alternatives as CSV in SI units" },
      units,
      json("coil"),
      catalogue,
    ],
    examples: [
      { line: "coil coil.yaml --working", meaning: "a coil with its arithmetic" },
      { line: "coil coil.yaml --alternatives --sort air --most 10", meaning: "the ten that resist the air least" },
    ],
  },
  {
    name: "fit-surface",
    meaning: "fit multipliers of a finned surface to a shop's own test points",
    details:
      "The CSV file has one row for each tested point of a clean coil on water in counterflow, and a header that names its columns, each with its unit in brackets: rows, tubes per row, circuits, finned length, fins, entering dry bulb, entering wet bulb or humidity ratio, airflow (actual) or dry air, entering water, water flow or water mass flow, capacity or leaving water, perhaps barometric pressure (sea level when left out). A steam coil, or a supplier's rating table of one, has steam pressure (gauge) or steam temperature in the coil instead of water and circuits, and capacity or leaving dry bulb; its air is dry when nothing is said. Tables on standard air have standard airflow. What is alike for all points may stand in --same. Prints errors by point, each multiplier with its confidence, and a record that states where it came from; a multiplier that the points do not tell is refused. Without --output the record is printed.",
    operands: [{ name: "file", meaning: "the test points (CSV), or - for standard input" }],
    options: [
      { flags: "--surface <record>", meaning: "the finned surface of the catalogue to start from" },
      {
        flags: "--fit <multipliers>",
        meaning:
          "air, water, wet: dry heat transfer, that in the tubes, ratio of wet to dry; friction, wet friction: dry air pressure loss, ratio of wet to dry; several with commas. Dry friction is fitted wherever the table has an air pressure drop",
        default: "air",
      },
      { flags: "--same <values>", meaning: 'what holds for every point: "rows=8; circuits=16; finned length=24 in"' },
      { flags: "--name <name>", meaning: "name of the record" },
      { flags: "-o, --output <file>", meaning: "write the record to this new file" },
      { flags: "--plot <file>", meaning: "write a picture of heat fitted against measured (SVG)" },
      json("fit-surface"),
      units,
      catalogue,
    ],
    examples: [
      {
        line: 'fit-surface points.csv --surface "typical plain 5/8 in" -o shop.yaml --plot fit.svg',
        meaning: "a record of the shop's own, and a picture to look at",
      },
      {
        line: 'fit-surface rating.csv --surface "typical steam-distributing 1 in" --json',
        meaning: "a steam coil by its supplier's table, for a program",
      },
    ],
  },
  {
    name: "read",
    meaning: "check a job file",
    details:
      "Lists every error with line, column, field, what is wrong, what is allowed and the name that was probably meant.",
    operands: [job],
    options: [
      { flags: "--defaults", meaning: "list every value that the text leaves to its default" },
      json("read"),
      catalogue,
    ],
    examples: [{ line: "read job.yaml --defaults", meaning: "errors, and what was assumed" }],
  },
  {
    name: "schema",
    meaning: "print a published JSON Schema",
    details: "The schema of job files serves editors; the others describe what --json prints.",
    operands: [{ name: "name", meaning: `one of ${schemaNames.join(", ")}; job when left out`, optional: true }],
    options: [],
    examples: [{ line: "schema > job.schema.json", meaning: "for an editor that completes and checks YAML" }],
  },
  {
    name: "serve",
    meaning: "serve the workbench page on this machine alone",
    details:
      "Prints an address with a token that is new at every start; only who has the address is answered, and only on this machine. The page reads and writes job files of one folder: that of the job, or the folder given; the shipped examples when nothing is given. The version of a file before each save stays beside it as .previous. Ends with Ctrl-C.",
    operands: [{ name: "path", meaning: "a job file to open, or a folder of job files", optional: true }],
    options: [
      { flags: "--port <number>", meaning: "port to listen on; 0 takes any free one", default: "7480" },
      { flags: "--no-open", meaning: "do not open the page in a browser" },
      catalogue,
      shop,
      { flags: "--profiles <folder>", meaning: "owner profiles of your own, besides the shipped ones" },
    ],
    examples: [
      { line: "serve jobs", meaning: "work in the folder jobs" },
      { line: "serve jobs/north-wing.yaml --port 0 --no-open", meaning: "open one job, on any free port" },
    ],
  },
];
