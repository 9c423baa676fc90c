import { Link } from '@tanstack/react-router';
import styles from './side-links.module.css';

interface Props {
  /** What the links have in common, for screen readers. */
  readonly label: string;
  readonly links: readonly { readonly to: string; readonly name: string }[];
}

/** Quiet ways to the neighbours of a page. */
export const SideLinks = ({ label, links }: Props) => (
  <nav aria-label={label}>
    <ul className={styles.links}>
      {links.map(({ to, name }) => (
        <li key={to}>
          <Link to={to} className={styles.link} activeOptions={{ exact: true }}>
            {name}
          </Link>
        </li>
      ))}
    </ul>
  </nav>
);
