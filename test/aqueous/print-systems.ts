// Prints random systems as JSON, for test/aqueous/reference.py.
import { numbersFrom, randomSystem } from "./systems";

const random = numbersFrom(2024);
console.log(JSON.stringify(Array.from({ length: Number(process.argv[2]) }, () => randomSystem(random))));
