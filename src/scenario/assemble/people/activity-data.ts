import type { ScenarioData } from '../../model/scenario-model.ts';

export type ActivityData = NonNullable<
  NonNullable<ScenarioData['household']>['activities']
>[number];
