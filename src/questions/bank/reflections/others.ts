import { reflectionOfReturnLoss, reflectionOfSwr } from '#compute';
import { inOrder, other, slip } from '../define.ts';
import { oneOf } from '../ranges.ts';
import type { BankQuestion } from '../types.ts';
import { fixed, given } from '../write.ts';

/** Reflections to put in order. */
export const REFLECTION_OTHERS: readonly BankQuestion[] = [
  other('reflections', 'order', {
    id: 'order-of-matches',
    lesson: 'measuring/what-comes-back',
    syllabus: ['6.3'],
    difficulty: 2,
    given: {
      best: oneOf(28, 30, 32),
      swr: oneOf(1.2, 1.25, 1.3),
      share: oneOf(4, 5, 6),
      worst: oneOf(4, 5, 6),
    },
    make: ({ best, swr, share, worst }) => {
      const rows = [
        {
          id: 'best',
          text: `a return loss of ${given(best, 'dB')}`,
          back: reflectionOfReturnLoss(best) ** 2,
        },
        { id: 'swr', text: `a standing-wave ratio of ${given(swr)}`, back: reflectionOfSwr(swr) ** 2 },
        { id: 'share', text: `${given(share, 'percent')} of the power comes back`, back: share / 100 },
        {
          id: 'worst',
          text: `a return loss of ${given(worst, 'dB')}`,
          back: reflectionOfReturnLoss(worst) ** 2,
        },
      ];
      const back = (at: number): string => fixed('percent', 2)(100 * (rows[at]?.back ?? 0));
      return {
        stem: 'Four loads, each described in its own way. Put them in order, the best match first.',
        payload: inOrder({
          ends: ['least comes back', 'most comes back'],
          items: rows.map(({ id, text }) => ({ id, text })),
          reversed: 'That begins with the worst. A large return loss is a good match: little comes back.',
          otherwise: slip(
            'amplitude-for-power',
            'Bring all of them to the share of power that comes back. And mind that a large return loss is a good match.',
          ),
        }),
        worked: [
          `Of the power there come back, of the return losses: ten to the power of −${given(best)}/10 is ${back(0)}, ten to the power of −${given(worst)}/10 is ${back(3)}; of the standing-wave ratio: ((${given(swr)} − 1)/(${given(swr)} + 1))² = ${back(1)}; and ${given(share, 'percent')}.`,
        ],
        right: 'All of them compared by the share of power that comes back.',
      };
    },
  }),
];
