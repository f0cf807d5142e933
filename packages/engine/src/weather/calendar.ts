/** A date and the hour that ends at `hour` o'clock, 1…24, as weather files count. */
export interface CalendarHour {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/** Short names of the months. */
export const monthNames = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
/** Weekdays as weather files name them, Sunday first. */
export const weekdays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;

/** Hours of a year without and with a leap day. */
export const hoursOfYear = 8760;
export const hoursOfLeapYear = 8784;

/** Days of a month of a year with that many hours; months count from 1. */
export function daysOfMonth(month: number, hours: number): number {
  return lengths[month - 1]! + (month === 2 && hours === hoursOfLeapYear ? 1 : 0);
}

/** Month (1…12), day and hour (1…24, ending) of the hour at an index of a year with that many hours. */
export function calendarHour(index: number, hours: number): CalendarHour {
  let day = Math.floor(index / 24);
  const hour = index - 24 * day + 1;
  for (let month = 1; month <= 12; month++) {
    const length = daysOfMonth(month, hours);
    if (day < length) return { month, day: day + 1, hour };
    day -= length;
  }
  throw new RangeError(`hour ${index} is outside a year of ${hours} hours`);
}

/** Index of the hour; the inverse of `calendarHour`. */
export function hourIndex({ month, day, hour }: CalendarHour, hours: number): number {
  let days = day - 1;
  for (let before = 1; before < month; before++) days += daysOfMonth(before, hours);
  return 24 * days + hour - 1;
}

/** Index of the first hour of every month, and the number of hours at the end: 13 entries. */
export function monthStarts(hours: number): readonly number[] {
  const starts = [0];
  for (let month = 1; month <= 12; month++) starts.push(starts[month - 1]! + 24 * daysOfMonth(month, hours));
  return starts;
}

/** Weekday of an hour's date: 0 Sunday … 6 Saturday. */
export function weekdayOf(index: number, firstWeekday: number): number {
  return (firstWeekday + Math.floor(index / 24)) % 7;
}

/** `14 Jan 07:00`: the date and the time at which the hour ends. */
export function hourName(index: number, hours: number): string {
  const { month, day, hour } = calendarHour(index, hours);
  return `${day} ${monthNames[month - 1]} ${String(hour).padStart(2, "0")}:00`;
}
