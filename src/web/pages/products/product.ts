import type { AnswerOf } from '../../api/shapes.ts';

export type Product = AnswerOf<'listProducts'>[number];
export type ProductDetails = Product['details'];
export type LabelFace = ProductDetails['faceMm'];
