import { holdRelations } from "../support/hold-relations.ts";

holdRelations("duct");
