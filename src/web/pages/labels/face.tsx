import { useEffect, useRef } from 'react';
import styles from './label.module.css';

interface Props {
  readonly svg: string;
  readonly name: string;
}

/**
 * One piece of the label, at true size. The drawing comes from our own layout; it is parsed as a picture, so that no text
 * in it is ever read as markup of the page.
 */
export function Face({ svg, name }: Props) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (svg === '') return;
    const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    // The box around it bears the role and the name.
    drawing.removeAttribute('role');
    place.current?.replaceChildren(document.importNode(drawing, true));
  }, [svg]);
  if (svg === '') return null;
  return <div ref={place} role="img" aria-label={name} className={styles.face} />;
}
