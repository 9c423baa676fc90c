import { notice } from '../api/notice.ts';
import { useStore } from '../api/use-store.ts';
import styles from './shell.module.css';

export const NoticeLine = () => (
  <div role="status" className={styles.notice}>
    {useStore(notice)}
  </div>
);
