/** Suture needle points: section, edges, and where the third edge of a cutting needle lies. */
import type { Confidence, SourceKey } from './model.ts';

export interface Point {
  readonly id: string;
  readonly name: string;
  readonly section: string;
  readonly edge: 'none' | 'inner' | 'outer' | 'sides';
  readonly use: string;
  /** Tissues that every text read gives it. */
  readonly fit: readonly string[];
  /** Tissues that no text read gives it, and that every one gives to another point. */
  readonly unfit: readonly string[];
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
}

export const POINTS: readonly Point[] = [
  {
    id: 'taper',
    name: 'taper (round-bodied)',
    section: 'round, spreads tissue',
    edge: 'none',
    use: 'bowel, peritoneum, muscle, fascia, vessels',
    fit: ['bowel', 'peritoneum', 'vessels'],
    unfit: ['tough skin', 'cornea and sclera'],
    confidence: 'confirmed',
    sources: ['medscapeP', 'residentnet', 'surgimedic'],
  },
  {
    id: 'blunt',
    name: 'blunt taper',
    section: 'round with a rounded tip, dissects',
    edge: 'none',
    use: 'liver, kidney, spleen, friable tissue',
    fit: ['liver', 'kidney', 'spleen'],
    unfit: ['skin', 'tough skin', 'cornea and sclera'],
    confidence: 'confirmed',
    sources: ['medscapeP', 'residentnet'],
  },
  {
    id: 'cutting',
    name: 'conventional cutting',
    section: 'triangular',
    edge: 'inner',
    use: 'skin and tough tissue',
    fit: ['skin', 'tough skin'],
    unfit: ['bowel', 'peritoneum', 'vessels', 'liver', 'kidney', 'spleen'],
    confidence: 'confirmed',
    sources: ['medscapeP', 'residentnet', 'surgimedic'],
  },
  {
    id: 'reverse-cutting',
    name: 'reverse cutting',
    section: 'triangular',
    edge: 'outer',
    use: 'skin, tendon sheath, oral mucosa',
    fit: ['skin', 'tough skin'],
    unfit: ['bowel', 'peritoneum', 'vessels', 'liver', 'kidney', 'spleen'],
    confidence: 'confirmed',
    sources: ['medscapeP', 'residentnet', 'surgimedic'],
  },
  {
    id: 'tapercut',
    name: 'tapercut',
    section: 'short cutting tip on a round body',
    edge: 'sides',
    use: 'calcified vessel, tough fascia, tendon',
    fit: [],
    unfit: [],
    confidence: 'single-source',
    sources: ['surgimedic'],
  },
  {
    id: 'spatula',
    name: 'spatula (side-cutting)',
    section: 'flat above and below',
    edge: 'sides',
    use: 'eye: passes between layers',
    fit: ['the eye', 'cornea and sclera'],
    unfit: ['bowel', 'peritoneum', 'liver', 'kidney', 'spleen'],
    confidence: 'confirmed',
    sources: ['medscapeP', 'residentnet'],
  },
  {
    id: 'diamond',
    name: 'diamond',
    section: 'four-sided',
    edge: 'sides',
    use: 'tendon, cartilage',
    fit: [],
    unfit: [],
    confidence: 'single-source',
    sources: ['residentnet'],
  },
];

export const pointById = (id: string): Point | undefined => POINTS.find((point) => point.id === id);
