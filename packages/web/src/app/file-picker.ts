/** A file that a person chose, with a way to write it back where the browser has one. */
export interface ChosenFile {
  readonly name: string;
  readonly text: string;
  readonly handle: FileSystemFileHandle | undefined;
}

/** Pickers that not every browser has. */
interface PickingWindow {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>;
  readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

const types = [{ description: "job text", accept: { "application/yaml": [".yaml", ".yml"] } }];
/** Larger files are no job texts. */
const largest = 4 * 1024 * 1024;

/** Lets the person choose a job file; undefined when they do not. */
export async function chooseFile(page: Window): Promise<ChosenFile | undefined> {
  const { showOpenFilePicker } = page as PickingWindow;
  if (showOpenFilePicker !== undefined) {
    const handles = await showOpenFilePicker.call(page, { types, excludeAcceptAllOption: false }).catch(() => []);
    const handle = handles[0];
    return handle === undefined ? undefined : chosen(await handle.getFile(), handle);
  }
  const file = await fileOfInput(page.document);
  return file === undefined ? undefined : chosen(file, undefined);
}

/** The first file of a drop. */
export async function droppedFile(transfer: DataTransfer): Promise<ChosenFile | undefined> {
  const file = transfer.files[0];
  return file === undefined ? undefined : chosen(file, undefined);
}

/** Writes the text where the person says, or hands it over as a download; gives the handle where there is one. */
export async function storeFile(
  page: Window,
  name: string,
  text: string,
  known: FileSystemFileHandle | undefined,
): Promise<{ readonly name: string; readonly handle: FileSystemFileHandle | undefined } | undefined> {
  const { showSaveFilePicker } = page as PickingWindow;
  if (known === undefined && showSaveFilePicker === undefined) {
    download(page.document, name, text);
    return { name, handle: undefined };
  }
  const handle = known ?? (await showSaveFilePicker?.call(page, { types, suggestedName: name }).catch(() => undefined));
  if (handle === undefined) return undefined;
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
  return { name: handle.name, handle };
}

async function chosen(file: File, handle: FileSystemFileHandle | undefined): Promise<ChosenFile> {
  if (file.size > largest) throw new Error(`${file.name} is too large to be a job text`);
  return { name: file.name, text: await file.text(), handle };
}

function fileOfInput(document: Document): Promise<File | undefined> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".yaml,.yml,application/yaml,text/yaml,text/plain";
  return new Promise((resolve) => {
    input.addEventListener("change", () => resolve(input.files?.[0]));
    input.addEventListener("cancel", () => resolve(undefined));
    input.click();
  });
}

function download(document: Document, name: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/yaml" }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
