import { useId, useState } from "react";
import { daysOfWeatherFile } from "#state/enquiry-days";
import { useEnquiry } from "#view/use-enquiry";

/** Place and design days out of the header of a weather file. */
export function WeatherDays() {
  const id = useId();
  const answer = useEnquiry((desk) => desk.answer);
  const [said, say] = useState({ text: "", fails: false });
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    const found = daysOfWeatherFile(await file.text());
    if (found.ok) answer(found.answers);
    say({ text: found.ok ? found.words : `${file.name}: ${found.problem}`, fails: !found.ok });
  };
  return (
    <p className="weather-days">
      <label htmlFor={id}>from a weather file</label>
      <input id={id} type="file" accept=".epw,text/plain" onChange={(event) => void take(event.target.files?.[0])} />
      <span role="status" className={said.fails ? "failing" : "quiet"}>
        {said.text}
      </span>
    </p>
  );
}
