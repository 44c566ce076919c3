import { useId } from 'preact/hooks';

export interface SliderProps {
  /** Heard only: what it is for stands above or before it. */
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** The value in words, with its unit: what a screen reader says. */
  readonly valueText: string;
  readonly onValue: (value: number) => void;
}

/** A native range with a label and a spoken value. */
export function Slider({ label, value, min, max, step, valueText, onValue }: SliderProps) {
  const id = useId();
  return (
    <div class="slider">
      <label for={id} class="visually-hidden">
        {label}
      </label>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={valueText}
        onInput={(event) => onValue(Number(event.currentTarget.value))}
      />
    </div>
  );
}
