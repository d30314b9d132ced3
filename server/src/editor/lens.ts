/** How a mention is to be measured: by its device and material. */
import type { Mention } from '../mentions/model.ts';
import type { Lens } from '../sizes/model.ts';

export const lensOf = (mention: Mention): Lens => ({
  ...(mention.device === undefined ? {} : { device: mention.device }),
  ...(mention.material === undefined ? {} : { material: mention.material }),
});
