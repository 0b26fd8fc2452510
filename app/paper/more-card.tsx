import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { type PaperChange, setPaper } from '../../core/garment/paper-edits';
import type { StoredVersion } from '../../core/garment/version';
import { MOST_OLDER } from '../../core/paper/older-lines';
import { SAFE_MARGIN } from '../../core/paper/page-sizes';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { paperWords as words } from '../words/paper';
import styles from './paper-room.module.css';
import { PrinterLoses } from './printer-loses';

interface MoreCardProps {
  readonly garment: Garment;
  readonly versions: readonly StoredVersion[];
  /** The numbers of the versions that are laid under the pieces. */
  readonly older: readonly number[];
  readonly onOlder: (versions: readonly number[]) => void;
}

/** What most leave as it is: margins, joins, how pieces are placed, squares and older versions. */
export function MoreCard({ garment, versions, older, onOlder }: MoreCardProps) {
  const edit = useGarment((state) => state.edit);
  const [isOpen, setOpen] = useState(false);
  const { paper, shownIn } = garment;
  const { margin, loses, joins = 'lapped', placed = 'fewest', squaresOver = 'none' } = paper;
  const change = (choice: PaperChange) => edit(words.paperLabel, (before) => setPaper(before, choice));
  return (
    <Card title={words.more} about="more-pages" open={isOpen} onToggle={setOpen}>
      <Choice
        label={words.placed}
        value={placed}
        options={[
          { value: 'fewest', words: words.fewest },
          { value: 'as-drawn', words: words.asDrawn },
        ]}
        onChange={(value) => change({ placed: value === 'fewest' ? undefined : value })}
      />
      <Choice
        label={words.joins}
        value={joins}
        options={[
          { value: 'lapped', words: words.lapped },
          { value: 'butted', words: words.butted },
        ]}
        onChange={(value) => change({ joins: value === 'lapped' ? undefined : value })}
      />
      {joins === 'lapped' && (
        <LengthField
          label={words.overlap}
          value={paper.overlap}
          shownIn={shownIn}
          min={0}
          onCommit={(overlap) => overlap !== undefined && change({ overlap })}
        />
      )}
      <PrinterLoses paper={paper} shownIn={shownIn} onChange={change} />
      {!paper.losesAt && (
        <LengthField
          label={words.margin}
          value={margin}
          shownIn={shownIn}
          min={0}
          onCommit={(wanted) => wanted !== undefined && change({ margin: wanted })}
        />
      )}
      {margin < (loses ?? SAFE_MARGIN) && <Note tone="warn">{words.keepsClear(loses, shownIn)}</Note>}
      <Choice
        label={words.squaresOver}
        value={squaresOver}
        options={[
          { value: 'none', words: words.noSquares },
          { value: 'inch', words: words.inchSquares },
          { value: 'centimetre', words: words.centimetreSquares },
        ]}
        onChange={(value) => change({ squaresOver: value === 'none' ? undefined : value })}
      />
      {versions.length > 0 && <OlderVersions versions={versions} older={older} onOlder={onOlder} />}
    </Card>
  );
}

/** Which versions lie under the pieces, each in a line of its own. */
function OlderVersions({ versions, older, onOlder }: Pick<MoreCardProps, 'versions' | 'older' | 'onOlder'>) {
  const named = (number: number) => {
    const version = versions.find((one) => one.number === number);
    return version ? words.versionNamed(version) : '';
  };
  const others = versions.filter(({ number }) => !older.includes(number));
  return (
    <>
      {older.map((number, index) => (
        <div key={number} className={styles.piece}>
          <span>{words.olderLine(index, named(number))}</span>
          <Button
            icon="close"
            title={words.withoutOlder(named(number))}
            onPress={() => onOlder(older.filter((one) => one !== number))}
          />
        </div>
      ))}
      {older.length < MOST_OLDER && others.length > 0 && (
        <Pick
          label={words.under}
          value="none"
          options={[
            { value: 'none', words: older.length === 0 ? words.noUnder : words.anotherUnder },
            ...others.map((version) => ({ value: String(version.number), words: words.versionNamed(version) })),
          ]}
          onChange={(value) => value !== 'none' && onOlder([...older, Number(value)])}
        />
      )}
    </>
  );
}
