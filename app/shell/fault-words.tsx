import { useState } from 'react';
import { download } from '../storage/download';
import { Button } from '../ui/button';
import { TextField } from '../ui/text-field';
import { shellWords as words } from '../words/shell';
import styles from './broken.module.css';
import { faultReport } from './fault-report';

interface FaultWordsProps {
  readonly where: string;
  readonly fault: unknown;
}

/** A report of a fault that she can read, add to and save; it is sent nowhere. */
export function FaultWords({ where, fault }: FaultWordsProps) {
  const [said, setSaid] = useState('');
  const [when] = useState(() => new Date());
  const report = faultReport({ where, fault, said, browser: navigator.userAgent, when });
  return (
    <details className={styles.report}>
      <summary>{words.report}</summary>
      <p>{words.reportHelp}</p>
      <TextField label={words.reportYours} value={said} onCommit={setSaid} multiline />
      <pre>{report}</pre>
      <Button onPress={() => download(new Blob([report]), 'inchsquare-fault.txt', 'text/plain')}>
        {words.reportSave}
      </Button>
    </details>
  );
}
