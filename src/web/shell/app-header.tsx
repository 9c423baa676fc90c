import { Link } from '@tanstack/react-router';
import { shellWords } from '../../words/index.ts';
import { PersonChooser } from './person-chooser.tsx';
import { RoomLink } from './room-link.tsx';
import { ROOMS, WORKSHOP_ROOM } from './rooms.ts';
import styles from './shell.module.css';

export const AppHeader = () => (
  <header className={styles.top}>
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
      </ul>
    </nav>
    <div className={styles.end}>
      <RoomLink room={WORKSHOP_ROOM} isQuiet />
      <PersonChooser />
    </div>
  </header>
);
