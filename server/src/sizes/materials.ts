/** Suture materials by generic name: absorbable or not, structure, origin. Sources beside each row. */
import type { Confidence, SourceKey } from './model.ts';

export interface Material {
  readonly id: string;
  readonly name: string;
  /** Other generic names and spellings, lower case. */
  readonly names: readonly string[];
  readonly absorbable: boolean;
  /** Structures in which it is made; a twisted gut counts as neither braided nor monofilament. */
  readonly structure: readonly ('monofilament' | 'multifilament' | 'twisted')[];
  readonly origin: 'natural' | 'synthetic' | 'metal';
  readonly confidence: Confidence;
  readonly sources: readonly SourceKey[];
  readonly note?: string;
}

const NATURAL = { origin: 'natural' } as const;
const SYNTHETIC = { origin: 'synthetic' } as const;

// biome-ignore format: one material a line
export const MATERIALS: readonly Material[] = [
  { id: 'plain-gut', name: 'plain gut', names: ['plain catgut'], absorbable: true, structure: ['twisted'], ...NATURAL, confidence: 'confirmed', sources: ['mrotte', 'wikichart', 'alicards', 'oneskill', 'JIST4102'] },
  { id: 'fast-gut', name: 'fast-absorbing gut', names: ['fast absorbing gut'], absorbable: true, structure: ['twisted'], ...NATURAL, confidence: 'single-source', sources: ['alicards'] },
  { id: 'chromic-gut', name: 'chromic gut', names: ['chromic catgut', 'chromic', 'chromicised catgut', 'chromicized catgut'], absorbable: true, structure: ['twisted'], ...NATURAL, confidence: 'confirmed', sources: ['mrotte', 'wikichart', 'alicards', 'oneskill'] },
  { id: 'gut', name: 'gut', names: ['catgut', 'surgical gut'], absorbable: true, structure: ['twisted'], ...NATURAL, confidence: 'confirmed', sources: ['mrotte', 'wikichart', 'alicards'] },
  { id: 'polyglactin-910', name: 'polyglactin 910', names: ['polyglactin', 'polyglactin-910', 'pg910'], absorbable: true, structure: ['multifilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['mrotte', 'oneskill', 'jportho', 'alicards'], note: 'the finest sizes are monofilament (from memory)' },
  { id: 'polyglactin-910-rapid', name: 'rapid polyglactin 910', names: ['fast-absorbing polyglactin 910', 'rapid polyglactin'], absorbable: true, structure: ['multifilament'], ...SYNTHETIC, confidence: 'single-source', sources: ['alicards'] },
  { id: 'polyglycolic-acid', name: 'polyglycolic acid', names: ['pga', 'polyglycolide', 'polyglycolic'], absorbable: true, structure: ['multifilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['wikichart', 'pgavet', 'oneskill'] },
  { id: 'poliglecaprone-25', name: 'poliglecaprone 25', names: ['poliglecaprone', 'poliglecaprone-25'], absorbable: true, structure: ['monofilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['mrotte', 'oneskill', 'jportho'] },
  { id: 'polydioxanone', name: 'polydioxanone', names: [], absorbable: true, structure: ['monofilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['mrotte', 'wikichart', 'oneskill', 'jportho'] },
  { id: 'polyglyconate', name: 'polyglyconate', names: [], absorbable: true, structure: ['monofilament'], ...SYNTHETIC, confidence: 'memory', sources: ['naleway'] },
  { id: 'glycomer-631', name: 'glycomer 631', names: ['glycomer'], absorbable: true, structure: ['monofilament'], ...SYNTHETIC, confidence: 'memory', sources: ['naleway'] },
  { id: 'polyglytone-6211', name: 'polyglytone 6211', names: ['polyglytone'], absorbable: true, structure: ['monofilament'], ...SYNTHETIC, confidence: 'single-source', sources: ['510kM'] },
  { id: 'silk', name: 'silk', names: [], absorbable: false, structure: ['multifilament'], ...NATURAL, confidence: 'confirmed', sources: ['mrotte', 'abdkey', 'USP32-nonabs'] },
  { id: 'cotton', name: 'cotton suture', names: ['surgical cotton'], absorbable: false, structure: ['twisted', 'multifilament'], ...NATURAL, confidence: 'confirmed', sources: ['USP32-nonabs'] },
  { id: 'linen', name: 'linen', names: ['linen thread'], absorbable: false, structure: ['twisted', 'multifilament'], ...NATURAL, confidence: 'confirmed', sources: ['USP32-nonabs'] },
  { id: 'nylon', name: 'nylon', names: ['polyamide', 'monofilament nylon', 'braided nylon'], absorbable: false, structure: ['monofilament', 'multifilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['medscapeN', 'abdkey'] },
  { id: 'polypropylene', name: 'polypropylene', names: [], absorbable: false, structure: ['monofilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['mrotte', 'abdkey'] },
  { id: 'polyester', name: 'polyester', names: ['braided polyester', 'polyethylene terephthalate'], absorbable: false, structure: ['multifilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['medscapeN', 'abdkey'] },
  { id: 'polybutester', name: 'polybutester', names: [], absorbable: false, structure: ['monofilament'], ...SYNTHETIC, confidence: 'single-source', sources: ['medscapeN'] },
  { id: 'eptfe', name: 'ePTFE', names: ['expanded polytetrafluoroethylene', 'ptfe'], absorbable: false, structure: ['monofilament'], ...SYNTHETIC, confidence: 'single-source', sources: ['chu'], note: 'sized by its own CV numbers, not by USP' },
  { id: 'uhmwpe', name: 'UHMWPE', names: ['ultra-high-molecular-weight polyethylene'], absorbable: false, structure: ['multifilament'], ...SYNTHETIC, confidence: 'confirmed', sources: ['510kU', '510kM'] },
  { id: 'pvdf', name: 'PVDF', names: ['polyvinylidene fluoride'], absorbable: false, structure: ['monofilament'], ...SYNTHETIC, confidence: 'memory', sources: [] },
  { id: 'stainless-steel', name: 'stainless steel', names: ['steel wire', 'surgical steel', 'steel suture'], absorbable: false, structure: ['monofilament', 'twisted', 'multifilament'], origin: 'metal', confidence: 'confirmed', sources: ['USP32-nonabs'] },
];

const BY_ID = new Map(MATERIALS.map((material) => [material.id, material]));
export const materialById = (id: string): Material | undefined => BY_ID.get(id);

/** Materials whose thread follows the collagen table of USP <861>. */
export const isCollagen = (id: string | undefined): boolean => id !== undefined && /(?:^|-)gut$/.test(id);
/** Absorbable monofilaments may be thicker than their row; their diameter is never called wrong. */
export function mayBeOversize(id: string | undefined): boolean {
  const material = id === undefined ? undefined : BY_ID.get(id);
  return material?.absorbable === true && material.structure.includes('monofilament');
}
