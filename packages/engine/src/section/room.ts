const rooms = new WeakMap<object, object>();

/**
 * The room in which a record's section is solved, made by `create` when it is first asked for. What was found there last is
 * the start of the next search, no more: answers agree within the tolerances of the searches, whatever was rated before.
 */
export function roomOf<Room extends object>(record: object, create: () => Room): Room {
  let room = rooms.get(record) as Room | undefined;
  if (room === undefined) {
    room = create();
    rooms.set(record, room);
  }
  return room;
}

/** Lets the ratings of one record start where those of another have ended; both are of the same section. */
export function shareRoom(from: object, to: object): void {
  const room = rooms.get(from);
  if (room !== undefined) rooms.set(to, room);
}
