// A few crystals of the product, so that the liquor does not stay supersaturated: too little to book.
import type { Pot } from "../contents/pot";
import { type Done, done } from "./operation";

export const seed = (before: Pot): Done => done("seed", before, before);
