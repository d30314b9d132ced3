/** A size said in the other systems a clinician may want. */
import { innerDiameter, nominalNeedle, outerDiameter, uspRow } from './diameter.ts';
import { fullLabel } from './format.ts';
import { contains, decimals, isDesignated, mmText, oneMm, weakest } from './interval.ts';
import { isCollagen } from './materials.ts';
import type { Conversion, Designated, Interval, Lens, Size, System } from './model.ts';
import { IV_CANNULA } from './tables/iv-cannula.ts';
import { NEEDLE_GAUGE } from './tables/needle-gauge.ts';
import type { UspRow } from './tables/rows.ts';
import { USP_COLLAGEN } from './tables/usp-collagen.ts';
import { USP_SYNTHETIC } from './tables/usp-synthetic.ts';
import { awg, MM_PER_INCH, swg } from './wire.ts';

/** Every useful other way to say a size; empty when its diameter is not given by the size. */
export function convert(size: Size, lens: Lens = {}): Conversion[] {
  return RULES[size.system](size, lens);
}

type Rule = (size: Size, lens: Lens) => Conversion[];

/** What a conversion takes over from the interval it rests on. */
function basis({ standard, sources, confidence, caution }: Interval) {
  return { standard, sources, confidence, ...(caution === undefined ? {} : { caution }) };
}

/** The outer diameter where it has one value; a wire gauge has one in each of its scales. */
function outer(size: Size, lens: Lens): Designated | undefined {
  const interval = outerDiameter(size, lens);
  return isDesignated(interval) ? interval : undefined;
}

function toMm(interval: Designated, text = mmText(interval)): Conversion {
  return { to: 'millimetre', text, value: interval.nominal, interval, ...basis(interval) };
}

/** A length in another length unit, from its nominal value. */
function toUnit(
  to: System,
  interval: Designated,
  perMm: number,
  text: (value: number) => string,
): Conversion {
  const value = interval.nominal * perMm;
  return { to, text: text(value), value, interval, ...basis(interval) };
}
const toInch = (i: Designated) => toUnit('inch', i, 1 / MM_PER_INCH, (v) => `${v.toFixed(3)} in`);
const toFrench = (i: Designated) => toUnit('french', i, 3, (v) => `${decimals(v, 1)} Fr`);

const fromUsp: Rule = (size, lens) => {
  const interval = outer(size, lens);
  const row = interval && uspRow(size.value, isCollagen(lens.material));
  if (!interval || !row) return [];
  const metric: Conversion = {
    to: 'ep-metric',
    text: `metric ${row.metric}`,
    value: row.metric,
    ...basis(interval),
  };
  return [metric, toMm(interval)];
};

const TABLES: readonly (readonly [string, readonly UspRow[], boolean])[] = [
  ['synthetic, silk, steel', USP_SYNTHETIC, false],
  ['gut', USP_COLLAGEN, true],
];

/** USP sizes whose row passes the test, in the tables that the material leaves open. */
function uspWhere(test: (row: UspRow) => boolean, { material }: Lens): Conversion[] {
  const tables = material === undefined ? TABLES : TABLES.filter(([, , gut]) => gut === isCollagen(material));
  return tables.flatMap(([name, rows]) => {
    const found = rows.filter(test);
    if (found.length === 0) return [];
    const sizes = found.map((row) => fullLabel({ system: 'usp', value: row.rank }).replace('USP ', ''));
    return [
      {
        to: 'usp' as const,
        text: `USP ${sizes.join(' and ')}${material === undefined ? ` (${name})` : ''}`,
        ...(found.length === 1 ? { value: found[0]!.rank } : {}),
        standard: 'USP <861>',
        sources: found[0]!.sources,
        confidence: weakest(found.map((row) => row.confidence)),
      },
    ];
  });
}

const fromMetric: Rule = (size, lens) => {
  const interval = outer(size, lens);
  if (!interval) return [];
  return [...uspWhere((row) => row.metric === size.value, lens), toMm(interval)];
};

/** With the thing unsaid a needle and an IV catheter are both shown. */
const fromGauge: Rule = (size, lens) => {
  const wire = lens.device === 'steel-wire' || lens.device === 'k-wire';
  if (wire) return fromWire(size, lens);
  const said = lens.device === 'needle' || lens.device === 'winged-set' || lens.device === 'cannula';
  if (said) return gaugeLengths(size, lens);
  const needle = outer(size, { device: 'needle' });
  const cannula = outer(size, { device: 'cannula' });
  return [
    ...(needle ? [toMm(needle, `${mmText(needle)} (needle)`)] : []),
    ...(cannula ? [toMm(cannula, `${mmText(cannula)} (IV catheter)`)] : []),
  ];
};

/** Inches of a needle are those of the nominal chart; its designated size is metric. */
function gaugeLengths(size: Size, lens: Lens): Conversion[] {
  const interval = outer(size, lens);
  if (!interval) return [];
  const chart = lens.device === 'cannula' ? undefined : nominalNeedle(size.value);
  return [toMm(interval), toInch(chart ?? interval), { ...toFrench(interval), text: aboutFrench(interval) }];
}

const aboutFrench = (interval: Designated): string => `about ${toFrench(interval).text}`;

const fromWire: Rule = (size) =>
  [awg(size.value), swg(size.value)].flatMap((interval) =>
    interval
      ? [
          {
            ...toMm(interval, `${oneMm(interval.min)} (${interval.standard})`),
            caution: 'the scales differ: give the diameter in mm',
          },
        ]
      : [],
  );

const fromFrench: Rule = (size, lens) => {
  if (lens.device === 'sheath') return accepted(innerDiameter(size, lens));
  const interval = outer(size, lens);
  if (!interval) return [];
  return [toMm(interval, oneMm(interval.nominal)), toInch(interval)];
};

function accepted(interval: Designated | undefined): Conversion[] {
  if (!interval) return [];
  const caution = 'the sheath itself is about 2 Fr thicker outside';
  return [{ ...toMm(interval, `accepts ${oneMm(interval.nominal)}`), caution }];
}

const fromMm: Rule = (size, lens) => {
  const interval = outer(size, lens);
  if (!interval) return [];
  if (lens.device === 'suture')
    return [...uspWhere((row) => contains(row2mm(row), size.value), lens), toInch(interval)];
  if (lens.device === 'needle' || lens.device === 'winged-set' || lens.device === 'cannula')
    return [...gaugesHolding(size.value, lens), toInch(interval)];
  return [toFrench(interval), toInch(interval)];
};

const row2mm = (row: UspRow): Interval => ({ ...row, standard: 'USP <861>' });

function gaugesHolding(mm: number, lens: Lens): Conversion[] {
  const rows = lens.device === 'cannula' ? IV_CANNULA : NEEDLE_GAUGE;
  const found = rows.flatMap(({ gauge }) => {
    const interval = outerDiameter({ system: 'needle-gauge', value: gauge }, lens);
    return interval && contains(interval, mm) ? [{ gauge, interval }] : [];
  });
  const first = found[0];
  if (!first) return [];
  const text = `${found.map((f) => f.gauge).join(' or ')} G`;
  const value = found.length === 1 ? { value: first.gauge } : {};
  return [{ to: 'needle-gauge', text, ...value, ...basis(first.interval) }];
}

const fromInch: Rule = (size, lens) => {
  const interval = outer(size, lens);
  return interval ? [toMm(interval), toFrench(interval)] : [];
};

const fromTube: Rule = (size, lens) => {
  const interval = innerDiameter(size, lens);
  return interval
    ? [{ ...toMm(interval, `${oneMm(size.value)} inside`), caution: 'the outside depends on the make' }]
    : [];
};

const fromHegar: Rule = (size, lens) => {
  const interval = outer(size, lens);
  return interval ? [toMm(interval), toFrench(interval)] : [];
};

const RULES: Readonly<Record<System, Rule>> = {
  usp: fromUsp,
  'ep-metric': fromMetric,
  'needle-gauge': fromGauge,
  'wire-gauge': fromWire,
  french: fromFrench,
  millimetre: fromMm,
  inch: fromInch,
  'wire-inch': fromInch,
  'tube-id': fromTube,
  hegar: fromHegar,
};
