import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** A clause of CEPT T/R 61-02 (HAREC), annex 6, part a: `8.1`. */
const clause = z.string().regex(/^\d+(\.\d+)?$/);

const lessons = defineCollection({
  loader: glob({ pattern: '*/*.mdx', base: './src/lessons' }),
  schema: z
    .object({
      title: z.string().min(3).max(80),
      summary: z.string().min(20).max(200),
      track: z.enum(['decibels', 'traceability', 'stacking', 'measuring']),
      order: z.number().int().positive(),
      minutes: z.number().int().min(3).max(20),
      /** Clauses of the syllabus that the lesson touches; empty means that it lies beyond the syllabus. */
      syllabus: z.array(clause),
      objectives: z.array(z.string().min(10)).min(1).max(5),
      /** Slugs of the worked examples that go with it. */
      examples: z.array(z.string()).default([]),
      /** What its preview card shows: a number of its prose with what it is and the figure that shows it, or the band of a prepared chain. */
      card: z.union([
        z
          .object({
            value: z.string(),
            figure: z.string(),
            state: z.string().optional(),
            says: z.string().min(5).max(110),
          })
          .strict(),
        z.object({ band: z.enum(['club', 'two-pads']) }).strict(),
      ]),
    })
    .strict(),
});

export const collections = { lessons };
