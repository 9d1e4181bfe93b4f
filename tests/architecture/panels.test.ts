// How panels read the page's state: by selectors while they render, from the store itself only when something happens.
import { describe, expect, it } from 'vitest';
import ts from 'typescript';
import { lineOf, parse, sourceFiles, textOf, walk } from './sourceFiles';

type Function = ts.ArrowFunction | ts.FunctionExpression | ts.FunctionDeclaration;
const isFunction = (node: ts.Node): node is Function =>
  ts.isArrowFunction(node) || ts.isFunctionExpression(node) || ts.isFunctionDeclaration(node);

function nameOf(found: Function): string {
  if (found.name !== undefined) return found.name.text;
  return ts.isVariableDeclaration(found.parent) && ts.isIdentifier(found.parent.name) ? found.parent.name.text : '';
}

/** What React calls while it renders: components, hooks, and what is handed to useState and useMemo. */
function rendersIn(found: Function): boolean {
  const called = ts.isCallExpression(found.parent) ? found.parent.expression.getText() : '';
  return /^([A-Z]|use[A-Z])/.test(nameOf(found)) || /^use(State|Memo)$/.test(called);
}

/** Reads of a store in the midst of a render, and selections whose result nobody uses, each as "path:line what". */
function breaches(path: string, text: string): string[] {
  const tree = parse(path, text);
  const found: string[] = [];
  walk(tree, (node) => {
    if (!ts.isCallExpression(node)) return;
    const called = node.expression;
    if (ts.isPropertyAccessExpression(called) && called.name.text === 'getState') {
      let around: ts.Node = node.parent;
      while (!isFunction(around) && !ts.isSourceFile(around)) around = around.parent;
      if (isFunction(around) && rendersIn(around)) found.push(`${path}:${lineOf(tree, node)} getState() in a render`);
    }
    const selects = ts.isIdentifier(called) && /^use(Page|Build|Lived|Opened|Presented)$/.test(called.text);
    if (selects && ts.isExpressionStatement(node.parent))
      found.push(`${path}:${lineOf(tree, node)} subscribed to for nothing but a redraw`);
  });
  return found;
}

describe('panels', () => {
  it('read the store by selectors alone while they render, and use what they select', () => {
    const panels = sourceFiles().filter((path) => path.startsWith('src/page/panels/'));
    expect(panels.length).toBeGreaterThan(50);
    expect(panels.flatMap((path) => breaches(path, textOf(path)))).toEqual([]);
  });
});

describe('the search for breaches', () => {
  it.each([
    'function Panel() { const { plan } = useStore().getState(); }',
    'const Panel = () => <p>{store.getState().plan}</p>;',
    'export function useThing() { return store.getState(); }',
    'function Panel() { const [hour] = useState(() => store.getState().hour); }',
    'function Panel() { usePage((page) => page.units); }',
    'function Panel() { useLived((lived) => lived.season); }',
  ])('finds %s', (text) => {
    expect(breaches('x.tsx', text)).toHaveLength(1);
  });

  it.each([
    'function Panel() { return <b onClick={() => store.getState().run()} />; }',
    'function Panel() { useEffect(() => { store.getState().read(); }, []); }',
    'function Panel() { const plan = usePage((page) => page.plan); }',
    'const messageOf = (store) => store.getState().words;',
  ])('lets %s pass', (text) => {
    expect(breaches('x.tsx', text)).toEqual([]);
  });
});
