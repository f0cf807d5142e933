import ts from "typescript";

/** One exported declaration of a module, as far as its doc block is judged by it. */
export interface ExportedThing {
  readonly name: string;
  readonly kind: "function" | "constant" | "class" | "type";
  /** Line of the declaration, counted from 1. */
  readonly line: number;
  /** The text between the comment's marks, each line without its star; undefined where there is none. */
  readonly block: string | undefined;
  readonly parameters: readonly { readonly name: string | undefined; readonly isNumber: boolean }[];
  readonly returns: "number" | "nothing" | "other";
  readonly throws: boolean;
}

/** Everything that a module exports by name at its top level; overloads of one function count once. */
export function readExports(text: string, fileName: string): ExportedThing[] {
  const source = ts.createSourceFile(fileName, text, ts.ScriptTarget.ES2023, true);
  const things = new Map<string, ExportedThing>();
  for (const statement of source.statements) {
    if (!ts.canHaveModifiers(statement)) continue;
    if (!ts.getModifiers(statement)?.some((each) => each.kind === ts.SyntaxKind.ExportKeyword)) continue;
    for (const thing of describeStatement(statement, source)) {
      const earlier = things.get(thing.name);
      if (earlier?.block === undefined) things.set(thing.name, thing);
      else if (thing.throws) things.set(thing.name, { ...earlier, throws: true });
    }
  }
  return [...things.values()];
}

function describeStatement(statement: ts.Statement, source: ts.SourceFile): ExportedThing[] {
  const plain = { parameters: [], returns: "other", throws: false } as const;
  const place = { line: lineOf(statement, source), block: blockOf(statement, source) };
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
