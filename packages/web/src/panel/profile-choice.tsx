import { useBench } from "#view/use-bench";

const path = "duty.ownerProfile";

/** Whose rules the unit is judged by; another choice is written into the duty. */
export function ProfileChoice({ names }: { names: readonly string[] }) {
  const current = useBench((bench) => bench.sound?.job.duty.ownerProfile) ?? "";
  const { editField } = useBench((bench) => bench.actions);
  const known = names.includes(current) ? names : [current, ...names];
  return (
    <label className="profile-choice">
      rules of{" "}
      <select className="typed" value={current} onChange={(event) => editField(path, event.target.value)}>
        {known.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
