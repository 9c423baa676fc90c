import { useRead } from '../../api/use-read.ts';
import { Select } from '../../parts/select.tsx';

interface Props {
  readonly label: string;
  readonly where: string;
  readonly value: string;
  readonly onChange: (id: string) => void;
  readonly none?: string;
}

/** Places where stock may be put by hand; retained samples are kept by the filling itself. */
export function PlaceChoice(props: Props) {
  const places = useRead('getWorkshop').data?.places ?? [];
  const choices = places.filter(({ kind }) => kind !== 'retained');
  return <Select {...props} choices={choices} />;
}
