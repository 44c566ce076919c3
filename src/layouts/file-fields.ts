import type { Fields, ScalarSpec } from '../address/field-spec.ts';
import { sheetFileForm } from '../bench/export/sheet-file.ts';
import { instrumentFileForm } from '../bench/instruments/instrument-file.ts';
import { longestIn } from '../exchange/schema.ts';
import { practiceFileForm } from '../practice/answers-file.ts';

/** A row of the description of files: one field with what it may hold. */
export interface FieldRow {
  readonly name: string;
  readonly label: string;
  readonly holds: string;
  readonly otherwise: string;
}

/** The fields of one thing in a file. */
export interface FieldTable {
  readonly id: string;
  readonly rows: readonly FieldRow[];
}

/**
 * Every table that a reader of the format needs: the sheet's own fields, those of each list in it, an instrument's, and those of
 * practised questions.
 */
export function fileTables(): readonly FieldTable[] {
  const { sheets } = sheetFileForm().lists;
  const { instruments } = instrumentFileForm().lists;
  const { practice } = practiceFileForm().lists;
  return [
    ...tablesOf('sheets', sheets),
    ...tablesOf('instruments', instruments),
    ...tablesOf('practice', practice),
  ];
}

function tablesOf(id: string, fields: Fields): readonly FieldTable[] {
  const rows = Object.entries(fields).map(([name, field]): FieldRow => {
    if (field.type !== 'list') return { name, label: field.label, ...scalarWords(field) };
    return {
      name,
      label: field.label,
      holds: `list of up to ${field.maxLength}, see below`,
      otherwise: 'empty list',
    };
  });
  const inner = Object.entries(fields).flatMap(([name, field]) =>
    field.type === 'list' ? tablesOf(name, field.of) : [],
  );
  return [{ id, rows }, ...inner];
}

function scalarWords(field: ScalarSpec): Pick<FieldRow, 'holds' | 'otherwise'> {
  switch (field.type) {
    case 'choice':
      return { holds: Object.keys(field.choices).join(', '), otherwise: field.default };
    case 'text': {
      const lines = field.lines ? 'text, several lines' : 'text';
      return { holds: `${lines}, up to ${longestIn(field)}`, otherwise: field.default };
    }
    case 'number':
    case 'maybe':
      return {
        holds: `number from ${field.min} to ${field.max}`,
        otherwise: field.default === undefined ? 'null' : String(field.default),
      };
  }
}
