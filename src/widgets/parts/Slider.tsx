import { useId } from 'preact/hooks';

export interface SliderProps {
  readonly label: string;
  readonly labelHidden?: boolean;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** The value in words, with its unit: what a screen reader says. */
  readonly valueText: string;
  readonly onValue: (value: number) => void;
}

/** A native range with a label and a spoken value. */
export function Slider({
  label,
  labelHidden = false,
  value,
  min,
  max,
  step,
  valueText,
  onValue,
}: SliderProps) {
  const id = useId();
  return (
    <div class="slider">
      <label for={id} class={labelHidden ? 'visually-hidden' : undefined}>
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
