import { ChevronDown } from 'lucide-react';
import {
  ComboBox as AriaComboBox,
  Button,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Text,
} from 'react-aria-components';
import { partWords } from '../../words/index.ts';
import box from './combo-box.module.css';
import styles from './form.module.css';
import { useFormField } from './form-context.ts';
import { sayHere } from './say-here.ts';
import type { Choice } from './select.tsx';

interface Props {
  readonly label: string;
  readonly where: string;
  readonly value: string | null;
  readonly onChange: (id: string | null) => void;
  readonly choices: readonly (Choice & { readonly about?: string })[];
  readonly hint?: string;
}

/** A long list to choose from by typing a part of the name. */
export function ComboBox({ label, where, value, onChange, choices, hint }: Props) {
  const { id, problem } = useFormField(where, value);
  return (
    <AriaComboBox
      className={styles.field ?? ''}
      defaultItems={choices}
      selectedKey={value}
      onSelectionChange={(key) => onChange(key === null ? null : String(key))}
      menuTrigger="focus"
      allowsEmptyCollection
      isInvalid={problem !== undefined}
      validationBehavior="aria"
      {...(id === undefined ? {} : { id })}
    >
      <Label className={styles.label}>{label}</Label>
      <div className={styles.box}>
        <Input className={styles.input} />
        <Button className={box.arrow} aria-label={partWords.showChoices}>
          <ChevronDown size={20} aria-hidden />
        </Button>
      </div>
      {hint && (
        <Text slot="description" className={styles.hint}>
          {hint}
        </Text>
      )}
      {problem && (
        <Text slot="errorMessage" className={styles.wrong}>
          {sayHere(problem, label).says} {sayHere(problem, label).mend}
        </Text>
      )}
      <Popover className={box.popover}>
        <ListBox<Choice & { readonly about?: string }>
          renderEmptyState={() => <div className={box.empty}>{partWords.noMatch}</div>}
        >
          {(choice) => (
            <ListBoxItem id={choice.id} textValue={choice.name} className={box.option}>
              <span>{choice.name}</span>
              {choice.about && <span className="soft small">{choice.about}</span>}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </AriaComboBox>
  );
}
