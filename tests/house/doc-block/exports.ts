import ts from "typescript";

/** One exported declaration of a module, as far as its doc block is judged by it. */
export interface ExportedThing {
  readonly name: string;
  readonly kind: "function" | "constant" | "class" | "type";
  /** Line of the declaration, counted from 1. */
  readonly line: number;
  /** The text between the comment's marks, each line without its star; undefined where there is none. */
  readonly block: string | undefined;
  /** A constant of a group: words stand above the group, beside the constant, or at the head of the file. */
  readonly isToldByGroup: boolean;
  readonly parameters: readonly { readonly name: string | undefined; readonly isNumber: boolean }[];
  readonly returns: "number" | "nothing" | "other";
  readonly throws: boolean;
}

/** Everything that a module exports by name at its top level; overloads of one function count once. */
export function readExports(text: string, fileName: string): ExportedThing[] {
  const source = ts.createSourceFile(fileName, text, ts.ScriptTarget.ES2023, true);
  const things = new Map<string, ExportedThing>();
  const groups = findGroups(source);
  for (const statement of source.statements) {
    if (!ts.canHaveModifiers(statement)) continue;
    if (!ts.getModifiers(statement)?.some((each) => each.kind === ts.SyntaxKind.ExportKeyword)) continue;
    for (const thing of describeStatement(statement, source, groups.has(statement))) {
      const earlier = things.get(thing.name);
      if (earlier?.block === undefined) things.set(thing.name, thing);
      else if (thing.throws) things.set(thing.name, { ...earlier, throws: true });
    }
  }
  return [...things.values()];
}

function describeStatement(statement: ts.Statement, source: ts.SourceFile, isToldByGroup: boolean): ExportedThing[] {
  const plain = { parameters: [], returns: "other", throws: false } as const;
  const place = { line: lineOf(statement, source), block: blockOf(statement, source), isToldByGroup };
  if (ts.isFunctionDeclaration(statement))
    return [{ ...place, kind: "function", name: statement.name?.text ?? "default", ...describeFunction(statement) }];
  if (ts.isClassDeclaration(statement))
    return [{ ...place, ...plain, kind: "class", name: statement.name?.text ?? "default" }];
  if (ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement))
    return [{ ...place, ...plain, kind: "type", name: statement.name.text }];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations.map((declaration) => {
    const name = declaration.name.getText(source);
    const value = declaration.initializer;
    const isFunction = value !== undefined && (ts.isArrowFunction(value) || ts.isFunctionExpression(value));
    return isFunction
      ? { ...place, kind: "function", name, ...describeFunction(value) }
      : { ...place, ...plain, kind: "constant", name };
  });
}

/** Constants that stand under the words of a group: no empty line between them, or words that head the file. */
function findGroups(source: ts.SourceFile): Set<ts.Statement> {
  const told = new Set<ts.Statement>();
  const headed = isHeaded(source);
  let open = false;
  let end = -2;
  for (const statement of source.statements) {
    const start = lineOf(statement, source);
    const line = source.text.slice(statement.getStart(source), source.text.indexOf("\n", statement.end));
    const hasWords = ts.getLeadingCommentRanges(source.text, statement.pos) !== undefined;
    open = ts.isVariableStatement(statement) && (hasWords || line.includes("//") || (open && start === end + 1));
    if (open || (headed && ts.isVariableStatement(statement))) told.add(statement);
    end = source.getLineAndCharacterOfPosition(statement.end).line + 1;
  }
  return told;
}

/** Whether words about the whole file stand before or right after its imports. */
function isHeaded(source: ts.SourceFile): boolean {
  const imports = source.statements.filter(ts.isImportDeclaration);
  const first = source.text.replace(/^#!.*\n/, "").trimStart();
  const afterImports = source.text.slice(imports.at(-1)?.end ?? 0).trimStart();
  const block = /^\/\*(?:[^*]|\*(?!\/))*\*\/\n/;
  const isApart = (text: string) => /^(\n|import )/.test(text.replace(block, "")) && block.test(text);
  return isApart(first) || isApart(afterImports) || (/^\/\*[^*]/.test(afterImports) && block.test(afterImports));
}

function describeFunction(
  declaration: ts.FunctionLikeDeclaration,
): Pick<ExportedThing, "parameters" | "returns" | "throws"> {
  const type = declaration.type?.kind;
  return {
    parameters: declaration.parameters.map((parameter) => ({
      name: ts.isIdentifier(parameter.name) ? parameter.name.text : undefined,
      isNumber: parameter.type?.kind === ts.SyntaxKind.NumberKeyword,
    })),
    returns: type === ts.SyntaxKind.NumberKeyword ? "number" : type === ts.SyntaxKind.VoidKeyword ? "nothing" : "other",
    throws: declaration.body !== undefined && holdsThrow(declaration.body),
  };
}

/** Whether a body throws by itself; what it defines for later does not count. */
function holdsThrow(node: ts.Node): boolean {
  if (ts.isThrowStatement(node)) return true;
  if (ts.isFunctionLike(node)) return false;
  return ts.forEachChild(node, (child) => holdsThrow(child) || undefined) ?? false;
}

function lineOf(node: ts.Node, source: ts.SourceFile): number {
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}

function blockOf(node: ts.Node, source: ts.SourceFile): string | undefined {
  const comment = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc).at(-1);
  return comment
    ?.getText(source)
    .replace(/^\/\*\*/, "")
    .replace(/\*\/$/, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd())
    .join("\n")
    .trim();
}
