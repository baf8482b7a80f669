import type { ScenarioData } from '../../model/scenario-model.ts';

export type PersonData = NonNullable<NonNullable<ScenarioData['household']>['people']>[number];
