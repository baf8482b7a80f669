import { z } from 'zod';
import { scenarioModel } from '../../src/scenario/model/scenario-model.ts';

/** The scenario model as a JSON Schema (draft 7), so that editors complete and explain the file. */
export function scenarioJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(scenarioModel, { io: 'input', target: 'draft-7' });
  return { ...schema, title: 'Scenario of one home' };
}
