import { listOf, number, record, text } from "./schema/describe.ts";

const line = record(
  {
    what: text(),
    quantity: text("kind of quantity"),
    declared: number("SI"),
    ours: number("SI"),
    difference: number("declared over ours, less one; of temperatures declared less ours, K"),
    tolerance: number("by which a certified rating may miss, measured as the difference"),
  },
  "tolerance",
);

const circumstance = record({
  what: text(),
  quantity: text("kind of quantity"),
  declared: number("SI"),
  here: number("SI"),
  asksMore: { type: "boolean", description: "the condition in hand asks more than the declared point" },
});

/** A supplier's declared rating beside ours; `placed` says of which section, where it can be of several. */
export function declaredRecord(placed: Readonly<Record<string, object>> = {}): object {
  return record({
    ...placed,
    number: text(),
    revision: text(),
    at: text("what both are rated at"),
    lines: listOf(line),
    circumstances: listOf(circumstance, "what differs from the condition in hand"),
    remarks: listOf(text(), "what does not fit, whatever the condition"),
    source: text("bibliography key"),
  });
}
