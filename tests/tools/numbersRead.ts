import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));
const src = join(root, 'src');

/** A number written in the sources: the file, the constant and the way to it inside that constant. */
export type NumberRead = string;
type Path = readonly string[];

/**
 * Follows names from one declaration to every number written in a constant that it can come to read: through
 * imports, functions and constants, and inside a constant only to the property that is asked for. Types are
 * left out. What is chosen while a page runs counts whole, so that nothing that may be read is missed.
 */
export function numbersReader(files: readonly string[]) {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile).config,
    ts.sys,
    root,
  );
  const program = ts.createProgram(
    files.map((file) => join(root, file)),
    { ...options, types: [], noLib: true },
  );
  const checker = program.getTypeChecker();

  function symbolOf(name: ts.Identifier): ts.Symbol | undefined {
    const found = ts.isShorthandPropertyAssignment(name.parent)
      ? checker.getShorthandAssignmentValueSymbol(name.parent)
      : checker.getSymbolAtLocation(name);
    return found && found.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(found) : found;
  }

  /** The constant or function of a file that a name stands for; undefined for parameters and locals. */
  function declarationOf(name: ts.Identifier): ts.VariableDeclaration | ts.FunctionDeclaration | undefined {
    const declared = symbolOf(name)?.valueDeclaration;
    if (!declared?.getSourceFile().fileName.startsWith(src)) return undefined;
    if (ts.isFunctionDeclaration(declared) && ts.isSourceFile(declared.parent)) return declared;
    if (ts.isVariableDeclaration(declared) && ts.isSourceFile(declared.parent.parent.parent)) return declared;
    // A part of a constant that is taken apart where it is declared: the whole of it.
    if (ts.isBindingElement(declared)) {
      const whole = ts.findAncestor(declared, ts.isVariableDeclaration);
      if (whole && ts.isSourceFile(whole.parent.parent.parent)) return whole;
    }
    return undefined;
  }

  function collect({ numbers, names }: Readonly<{ numbers: Set<NumberRead>; names: Set<string> }>) {
    const seen = new Map<ts.Node, Set<string>>();

    function follow(declared: ts.VariableDeclaration | ts.FunctionDeclaration, path: Path): void {
      const been = seen.get(declared) ?? new Set();
      seen.set(declared, been);
      if (been.has(path.join('\n')) || been.has('')) return;
      been.add(path.join('\n'));
      const name = `${relative(src, declared.getSourceFile().fileName)} ${declared.name?.getText() ?? ''}`;
      names.add(name);
      if (ts.isFunctionDeclaration(declared)) visit(declared);
      else if (declared.initializer) read(declared.initializer, path, name);
    }

    /** Reads what a path leads to inside a value; a number that is written there has the name of its way. */
    function read(value: ts.Expression, path: Path, name: string): void {
      const bare = withoutTypes(value);
      const [first, ...rest] = path;
      if (isWritten(bare)) numbers.add(name);
      else if (ts.isIdentifier(bare) || isAccess(bare)) reach(bare, path);
      else if (ts.isObjectLiteralExpression(bare) || ts.isArrayLiteralExpression(bare)) {
        const parts = partsOf(bare);
        const at = first === undefined ? -1 : parts.findLastIndex(({ key }) => key === first);
        // What is spread in later may stand in its place. What is not found (a method, say) needs the whole.
        const asked =
          at < 0 ? parts : parts.filter(({ key }, i) => i === at || (i > at && key === undefined));
        for (const { key, value: part, isSpread } of asked)
          if (!ts.isExpression(part)) visit(part);
          else read(part, isSpread ? path : key === first ? rest : [], `${name}.${key ?? '…'}`);
      } else visit(bare);
    }

    /** A name with the properties asked of it: `values.few`, `values['few']`, `edges[0]`. */
    function reach(expression: ts.Expression, then: Path): void {
      const path: string[] = [];
      let at: ts.Expression = expression;
      while (isAccess(at)) {
        const key = keyOf(at);
        if (key === undefined) {
          // Which property is asked for is known only while it runs.
          path.length = 0;
          if (ts.isElementAccessExpression(at)) visit(at.argumentExpression);
        } else path.unshift(key);
        at = withoutTypes(at.expression);
      }
      if (!ts.isIdentifier(at)) return visit(at);
      const declared = declarationOf(at);
      if (declared) follow(declared, isDynamic(expression) ? path : [...path, ...then]);
    }

    function visit(node: ts.Node): void {
      if (ts.isTypeNode(node) || ts.isTypeAliasDeclaration(node) || ts.isInterfaceDeclaration(node)) return;
      if (ts.isVariableDeclaration(node) && ts.isObjectBindingPattern(node.name) && node.initializer) {
        const names = node.name.elements.map(({ propertyName, name, dotDotDotToken }) =>
          dotDotDotToken ? undefined : (propertyName ?? name).getText(),
        );
        for (const name of names) {
          if (isReference(node.initializer)) reach(node.initializer, name === undefined ? [] : [name]);
          else visit(node.initializer);
        }
        return;
      }
      if (isReference(node)) return reach(node, []);
      if (ts.isShorthandPropertyAssignment(node)) return reach(node.name, []);
      if (ts.isPropertyAssignment(node)) return visit(node.initializer);
      ts.forEachChild(node, visit);
    }

    return { read, visit };
  }

  const statementsOf = (file: string): readonly ts.Statement[] =>
    program.getSourceFile(join(root, file))?.statements ?? [];

  return {
    /** The parts of every constant that a file exports. */
    partsIn: (file: string): readonly Part[] =>
      statementsOf(file)
        .filter(ts.isVariableStatement)
        .filter(({ modifiers }) => modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
        .flatMap(({ declarationList }) => declarationList.declarations)
        .flatMap(({ initializer }) => (initializer ? partsOf(withoutTypes(initializer)) : [])),
    partsOf: (value: ts.Node): readonly Part[] =>
      ts.isExpression(value) ? partsOf(withoutTypes(value)) : [],
    /** All that a file does. */
    wholeOf: (file: string): readonly ts.Node[] =>
      statementsOf(file).filter((statement) => !ts.isImportDeclaration(statement)),
    /** Every number that these parts of the sources can come to read, and every constant and function on the way. */
    readBy: (
      values: readonly ts.Node[],
    ): Readonly<{ numbers: ReadonlySet<NumberRead>; names: ReadonlySet<string> }> => {
      const found = { numbers: new Set<NumberRead>(), names: new Set<string>() };
      const { visit } = collect(found);
      for (const value of values) visit(value);
      return found;
    },
  };
}

type Access = ts.PropertyAccessExpression | ts.ElementAccessExpression;
const isAccess = (node: ts.Node): node is Access =>
  ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node);
const isReference = (node: ts.Node): node is Access | ts.Identifier =>
  ts.isIdentifier(node) || isAccess(node);

function keyOf(access: Access): string | undefined {
  if (ts.isPropertyAccessExpression(access)) return access.name.text;
  const key = withoutTypes(access.argumentExpression);
  return ts.isStringLiteralLike(key) || ts.isNumericLiteral(key) ? key.text : undefined;
}

function isDynamic(expression: ts.Expression): boolean {
  return (
    isAccess(expression) &&
    (keyOf(expression) === undefined || isDynamic(withoutTypes(expression.expression)))
  );
}

function withoutTypes(value: ts.Expression): ts.Expression {
  return ts.isAsExpression(value) ||
    ts.isSatisfiesExpression(value) ||
    ts.isParenthesizedExpression(value) ||
    ts.isNonNullExpression(value)
    ? withoutTypes(value.expression)
    : value;
}

/** A number, or a sum of numbers, written as it stands. */
function isWritten(value: ts.Expression): boolean {
  const bare = withoutTypes(value);
  if (ts.isNumericLiteral(bare)) return true;
  if (ts.isPrefixUnaryExpression(bare)) return isWritten(bare.operand);
  return ts.isBinaryExpression(bare) && isWritten(bare.left) && isWritten(bare.right);
}

type Part = Readonly<{ key?: string; value: ts.Node; isSpread?: true }>;

/** The parts of an object or a list with their keys; what is spread into it or worked out has none. */
function partsOf(value: ts.Expression): readonly Part[] {
  if (ts.isArrayLiteralExpression(value))
    return value.elements.map((part, index) =>
      ts.isSpreadElement(part)
        ? { value: part.expression, isSpread: true }
        : { key: String(index), value: part },
    );
  if (!ts.isObjectLiteralExpression(value)) return [];
  return value.properties.map((property): Part => {
    if (ts.isSpreadAssignment(property)) return { value: property.expression, isSpread: true };
    if (ts.isShorthandPropertyAssignment(property)) return { key: property.name.text, value: property.name };
    if (!ts.isPropertyAssignment(property)) return { value: property };
    return ts.isComputedPropertyName(property.name)
      ? { value: property.initializer }
      : { key: property.name.text, value: property.initializer };
  });
}
