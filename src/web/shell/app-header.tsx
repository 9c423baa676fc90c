import { Link } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { PersonChooser } from './person-chooser.tsx';
import { RoomLink } from './room-link.tsx';
import { ROOMS, WORKSHOP_ROOM } from './rooms.ts';
import styles from './shell.module.css';

interface Props {
  readonly isExample: boolean;
}

export const AppHeader = ({ isExample }: Props) => (
  <header>
    <div className={styles.top}>
      <Link to="/" className={styles.mark}>
        {shellWords.product}
      </Link>
      <nav className={styles.rooms} aria-label={shellWords.rooms}>
        <ul>
          {ROOMS.map((room) => (
            <li key={room.to}>
              <RoomLink room={room} />
            </li>
          ))}
          <li className={styles.apart}>
            <RoomLink room={WORKSHOP_ROOM} isQuiet />
          </li>
        </ul>
      </nav>
      <PersonChooser />
    </div>
    {isExample && (
      <p className={styles.example}>
        {shellWords.example} <Link to="/workshop">{shellWords.toOwn}</Link>
      </p>
    )}
  </header>
);
