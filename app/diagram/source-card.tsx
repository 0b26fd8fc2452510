import { useState } from 'react';
import type { Source } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { Card } from '../ui/card';
import { TextField } from '../ui/text-field';
import { diagramWords } from '../words/diagram';

const words = diagramWords.source;
const fields = ['book', 'page', 'plate', 'year', 'remarks'] as const satisfies readonly (keyof Source)[];

interface SourceCardProps {
  readonly source: Source;
  /** Whether it is open when it first comes. */
  readonly openAtFirst?: boolean;
}

/** Where the diagram was found, kept with the garment. */
export function SourceCard({ source, openAtFirst = false }: SourceCardProps) {
  const edit = useGarment((state) => state.edit);
  const [open, setOpen] = useState(openAtFirst);
  return (
    <Card title={words.title} about="source" open={open} onToggle={setOpen} aside={source.book || undefined}>
      {fields.map((field) => (
        <TextField
          key={field}
          label={words[field]}
          value={source[field]}
          multiline={field === 'remarks'}
          {...(field === 'remarks' ? { hint: words.remarksHint } : {})}
          onCommit={(text) =>
            edit(diagramWords.labels.source, (garment) => ({
              ...garment,
              source: { ...garment.source, [field]: text },
            }))
          }
        />
      ))}
    </Card>
  );
}
