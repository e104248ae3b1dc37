// The product into its bottle, and on the balance.
import type { Pot } from "../contents/pot";
import { type Done, done } from "./operation";

export const collect = (before: Pot): Done => done("collect", before, before);
