import { Link, useLocation } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { isInRoom } from './is-in-room.ts';
import type { Room } from './rooms.ts';
import styles from './shell.module.css';

interface Props {
  readonly room: Room;
  readonly isQuiet?: boolean;
}

/** On a phone the rooms scroll sideways: the one we are in is brought into sight. */
export function RoomLink({ room, isQuiet = false }: Props) {
  const path = useLocation({ select: (location) => location.pathname });
  const isHere = isInRoom(path, room);
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (isHere) link.current?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [isHere]);
  return (
    <Link
      ref={link}
      to={room.to}
      activeOptions={{ exact: true }}
      activeProps={{}}
      className={isQuiet ? `${styles.room} ${styles.quiet}` : styles.room}
      aria-current={isHere ? 'page' : undefined}
    >
      {room.name}
    </Link>
  );
}
