/** A sheet in either form. */
import { sheetChart } from './chart.ts';
import type { Request } from './request.ts';
import { sheetTable } from './table.ts';

export type SheetForm = 'table' | 'chart';

export const sheetText = (form: SheetForm, request: Request): string =>
  form === 'table' ? sheetTable(request) : sheetChart(request);
