// Plans in a table of SQLite, as the JSON that they write themselves: a newer release makes the plan again from it and says which
// figures moved. Uses the SQLite of Node where there is one (Node 22 and later), else sql.js; any other will do that can run a
// statement. Try it: npx tsx --tsconfig test/tsconfig.json docs/examples/plan-store-sqlite.ts
import { createRequire } from "node:module";
import { type Plan, planFromJSON, planPreparation } from "preparative";

type Cell = string | number;

/** What a store needs of a database. */
export interface Database {
  /** Run a statement with values for its question marks. */
  run(sql: string, values?: readonly Cell[]): void;
  /** The rows that a statement gives. */
  all(sql: string, values?: readonly Cell[]): Record<string, Cell>[];
}

const require = createRequire(import.meta.url);

/** What of `node:sqlite` is used: the types of Node 20 do not have it. */
interface OfNode {
  readonly DatabaseSync: new (
    path: string,
  ) => {
    prepare(sql: string): { run(...values: Cell[]): unknown; all(...values: Cell[]): Record<string, Cell>[] };
  };
}

/** The SQLite that Node brings, or undefined. */
export function ofNode(): Database | undefined {
  if (Number(process.versions.node.split(".")[0]) < 22) return undefined;
  const { DatabaseSync } = require("node:sqlite") as OfNode;
  const database = new DatabaseSync(":memory:");
  return {
    run: (sql, values = []) => void database.prepare(sql).run(...values),
    all: (sql, values = []) => database.prepare(sql).all(...values),
  };
}

/** The one of sql.js. */
export async function ofSqlJs(): Promise<Database> {
  const { default: load } = await import("sql.js");
  const database = new (await load()).Database();
  return {
    run: (sql, values = []) => database.run(sql, [...values]),
    all: (sql, values = []) => {
      const statement = database.prepare(sql, [...values]);
      const rows: Record<string, Cell>[] = [];
      while (statement.step()) rows.push(statement.getAsObject() as Record<string, Cell>);
      statement.free();
      return rows;
    },
  };
}

export const openDatabase = async (): Promise<Database> => ofNode() ?? (await ofSqlJs());

export function planStore(database: Database) {
  database.run("create table if not exists plans (id integer primary key, title text, product text, plan text)");
  return {
    put(plan: Plan): number {
      const { title, product } = plan;
      const values = [title, product.formula, JSON.stringify(plan)];
      database.run("insert into plans (title, product, plan) values (?, ?, ?)", values);
      return Number(database.all("select max(id) as id from plans")[0]!["id"]);
    },
    get(id: number): Plan | undefined {
      const [row] = database.all("select plan from plans where id = ?", [id]);
      return row === undefined ? undefined : planFromJSON(JSON.parse(String(row["plan"])));
    },
    list: (product: string): string[] =>
      database
        .all("select id, title from plans where product = ? order by id", [product])
        .map(({ id, title }) => `${id}: ${title}`),
  };
}

if (process.argv[1]?.endsWith("plan-store-sqlite.ts")) {
  const store = planStore(await openDatabase());
  const plan = planPreparation({
    equation: "CaCO3 -> CaO + CO2",
    product: "CaO",
    materials: [{ name: "whiting", form: "CaCO3" }],
    scale: { material: "whiting", portion: "100 g" },
  });
  const again = store.get(store.put(plan));
  console.log(String(again), again?.moved.length === 0 ? "as it was" : again?.moved);
}
