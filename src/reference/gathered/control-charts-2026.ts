/**
 * Factors of control charts, run rules and quantiles, gathered from several publications; each row names its own.
 *
 * `published`: as printed in the source. Printed tables differ from each other in the last digit for a few D3, D4 and B
 * (D4 at n = 5 is printed 2.114 or 2.115). `computed`: six decimals from the definitions, d2 and d3 being mean and
 * standard deviation of the range of n unit normals, c4 = sqrt(2 / (n - 1)) Gamma(n / 2) / Gamma((n - 1) / 2).
 */
import type { ReferenceSource, SourcedRow } from '../sourced-row.ts';

export interface ControlChartFactors extends SourcedRow {
  readonly subgroupSize: number;
  readonly published: {
    readonly A2: number;
    readonly A3: number;
    readonly c4: number;
    readonly inverseC4?: number;
    readonly B3: number;
    readonly B4: number;
    readonly B5: number;
    readonly B6: number;
    readonly d2: number;
    readonly inverseD2?: number;
    readonly d3?: number;
    readonly D3: number;
    readonly D4: number;
  };
  readonly computed: {
    readonly d2: number;
    readonly d3: number;
    readonly c4: number;
    readonly A2: number;
    readonly A3: number;
    readonly B3: number;
    readonly B4: number;
    readonly B5: number;
    readonly B6: number;
    readonly D1: number;
    readonly D2: number;
    readonly D3: number;
    readonly D4: number;
  };
}

export interface ControlChartFormula extends SourcedRow {
  readonly chart: string;
  readonly title: string;
  readonly centre?: string;
  readonly limits: string;
  readonly sigmaMultiple?: number;
}

export interface RunRule extends SourcedRow {
  readonly rule: string;
  readonly points: number;
  readonly outOf: number;
  readonly beyondSigma: number;
  readonly sameSide: boolean;
  readonly text: string;
}

export interface NormalQuantileRow extends SourcedRow {
  readonly probability: number;
  readonly quantile: number;
}

export interface StudentQuantileRow extends SourcedRow {
  readonly degreesOfFreedom: number;
  /** By probability. */
  readonly quantiles: Readonly<Record<string, number>>;
}

export interface ToleranceFactorRow extends SourcedRow {
  readonly sampleSize: number;
  readonly confidenceLevel: number;
  readonly factorByCoverage: Readonly<Record<string, number>>;
  readonly formula: string;
}

export const controlChartFactors: readonly ControlChartFactors[] = [
  {
    id: 'subgroup-2', subgroupSize: 2,
    published: { A2: 1.88, A3: 2.659, c4: 0.7979, inverseC4: 1.2533, B3: 0, B4: 3.267, B5: 0, B6: 2.606, d2: 1.128, inverseD2: 0.8865, d3: 0.853, D3: 0, D4: 3.267 },
    computed: { d2: 1.128379, d3: 0.852502, c4: 0.797885, A2: 1.879971, A3: 2.658681, B3: 0, B4: 3.266532, B5: 0, B6: 2.606315, D1: 0, D2: 3.685887, D3: 0, D4: 3.266532 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-3', subgroupSize: 3,
    published: { A2: 1.023, A3: 1.954, c4: 0.8862, inverseC4: 1.1284, B3: 0, B4: 2.568, B5: 0, B6: 2.276, d2: 1.693, inverseD2: 0.5907, d3: 0.888, D3: 0, D4: 2.574 },
    computed: { d2: 1.692569, d3: 0.888368, c4: 0.886227, A2: 1.023327, A3: 1.95441, B3: 0, B4: 2.56817, B5: 0, B6: 2.275981, D1: 0, D2: 4.357673, D3: 0, D4: 2.574591 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-4', subgroupSize: 4,
    published: { A2: 0.729, A3: 1.628, c4: 0.9213, inverseC4: 1.0854, B3: 0, B4: 2.266, B5: 0, B6: 2.088, d2: 2.059, inverseD2: 0.4857, d3: 0.88, D3: 0, D4: 2.282 },
    computed: { d2: 2.058751, d3: 0.879808, c4: 0.921318, A2: 0.728597, A3: 1.628103, B3: 0, B4: 2.266047, B5: 0, B6: 2.087749, D1: 0, D2: 4.698175, D3: 0, D4: 2.282052 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-5', subgroupSize: 5,
    published: { A2: 0.577, A3: 1.427, c4: 0.94, inverseC4: 1.0638, B3: 0, B4: 2.089, B5: 0, B6: 1.964, d2: 2.326, inverseD2: 0.4299, d3: 0.864, D3: 0, D4: 2.114 },
    computed: { d2: 2.325929, d3: 0.864082, c4: 0.939986, A2: 0.576819, A3: 1.427299, B3: 0, B4: 2.088998, B5: 0, B6: 1.963628, D1: 0, D2: 4.918175, D3: 0, D4: 2.114499 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-6', subgroupSize: 6,
    published: { A2: 0.483, A3: 1.287, c4: 0.9515, inverseC4: 1.051, B3: 0.03, B4: 1.97, B5: 0.029, B6: 1.874, d2: 2.534, inverseD2: 0.3946, d3: 0.848, D3: 0, D4: 2.004 },
    computed: { d2: 2.534413, d3: 0.84804, c4: 0.951533, A2: 0.483246, A3: 1.287128, B3: 0.030363, B4: 1.969637, B5: 0.028892, B6: 1.874174, D1: 0, D2: 5.078532, D3: 0, D4: 2.00383 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-7', subgroupSize: 7,
    published: { A2: 0.419, A3: 1.182, c4: 0.9594, inverseC4: 1.0423, B3: 0.118, B4: 1.882, B5: 0.113, B6: 1.806, d2: 2.704, inverseD2: 0.3698, d3: 0.833, D3: 0.076, D4: 1.924 },
    computed: { d2: 2.704357, d3: 0.833205, c4: 0.959369, A2: 0.419284, A3: 1.181916, B3: 0.117685, B4: 1.882315, B5: 0.112903, B6: 1.805834, D1: 0.204741, D2: 5.203973, D3: 0.075708, D4: 1.924292 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-8', subgroupSize: 8,
    published: { A2: 0.373, A3: 1.099, c4: 0.965, inverseC4: 1.0363, B3: 0.185, B4: 1.815, B5: 0.179, B6: 1.751, d2: 2.847, inverseD2: 0.3512, d3: 0.82, D3: 0.136, D4: 1.864 },
    computed: { d2: 2.847201, d3: 0.819831, c4: 0.96503, A2: 0.372527, A3: 1.099095, B3: 0.18509, B4: 1.81491, B5: 0.178617, B6: 1.751444, D1: 0.387706, D2: 5.306695, D3: 0.136171, D4: 1.863829 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-9', subgroupSize: 9,
    published: { A2: 0.337, A3: 1.032, c4: 0.9693, inverseC4: 1.0317, B3: 0.239, B4: 1.761, B5: 0.232, B6: 1.707, d2: 2.97, inverseD2: 0.3367, d3: 0.808, D3: 0.184, D4: 1.816 },
    computed: { d2: 2.970026, d3: 0.807834, c4: 0.969311, A2: 0.336697, A3: 1.031661, B3: 0.239133, B4: 1.760867, B5: 0.231794, B6: 1.706827, D1: 0.546524, D2: 5.393529, D3: 0.184013, D4: 1.815987 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-10', subgroupSize: 10,
    published: { A2: 0.308, A3: 0.975, c4: 0.9727, inverseC4: 1.0281, B3: 0.284, B4: 1.716, B5: 0.276, B6: 1.669, d2: 3.078, inverseD2: 0.3249, d3: 0.797, D3: 0.223, D4: 1.777 },
    computed: { d2: 3.077505, d3: 0.797051, c4: 0.972659, A2: 0.308264, A3: 0.97535, B3: 0.283706, B4: 1.716294, B5: 0.275949, B6: 1.66937, D1: 0.686353, D2: 5.468657, D3: 0.223023, D4: 1.776977 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-11', subgroupSize: 11,
    published: { A2: 0.285, A3: 0.927, c4: 0.9754, inverseC4: 1.0252, B3: 0.321, B4: 1.679, B5: 0.313, B6: 1.637, d2: 3.173, inverseD2: 0.3152, d3: 0.787, D3: 0.256, D4: 1.744 },
    computed: { d2: 3.172873, d3: 0.787315, c4: 0.97535, A2: 0.285084, A3: 0.927394, B3: 0.32128, B4: 1.67872, B5: 0.313361, B6: 1.63734, D1: 0.810929, D2: 5.534817, D3: 0.255582, D4: 1.744418 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-12', subgroupSize: 12,
    published: { A2: 0.266, A3: 0.886, c4: 0.9776, inverseC4: 1.0229, B3: 0.354, B4: 1.646, B5: 0.346, B6: 1.61, d2: 3.258, inverseD2: 0.3069, d3: 0.778, D3: 0.283, D4: 1.717 },
    computed: { d2: 3.258455, d3: 0.778478, c4: 0.977559, A2: 0.265778, A3: 0.885906, B3: 0.353512, B4: 1.646488, B5: 0.345579, B6: 1.60954, D1: 0.92302, D2: 5.59389, D3: 0.283269, D4: 1.716731 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-13', subgroupSize: 13,
    published: { A2: 0.249, A3: 0.85, c4: 0.9794, inverseC4: 1.021, B3: 0.382, B4: 1.618, B5: 0.374, B6: 1.585, d2: 3.336, inverseD2: 0.2998, d3: 0.77, D3: 0.307, D4: 1.693 },
    computed: { d2: 3.33598, d3: 0.770416, c4: 0.979406, A2: 0.249417, A3: 0.849546, B3: 0.381556, B4: 1.618444, B5: 0.373698, B6: 1.585113, D1: 1.024732, D2: 5.647229, D3: 0.307176, D4: 1.692824 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-14', subgroupSize: 14,
    published: { A2: 0.235, A3: 0.817, c4: 0.981, inverseC4: 1.0194, B3: 0.406, B4: 1.594, B5: 0.399, B6: 1.563, d2: 3.407, inverseD2: 0.2935, d3: 0.763, D3: 0.328, D4: 1.672 },
    computed: { d2: 3.406763, d3: 0.763023, c4: 0.980971, A2: 0.235351, A3: 0.817336, B3: 0.406245, B4: 1.593755, B5: 0.398515, B6: 1.563428, D1: 1.117694, D2: 5.695832, D3: 0.328081, D4: 1.671919 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-15', subgroupSize: 15,
    published: { A2: 0.223, A3: 0.789, c4: 0.9823, inverseC4: 1.018, B3: 0.428, B4: 1.572, B5: 0.421, B6: 1.544, d2: 3.472, inverseD2: 0.288, d3: 0.756, D3: 0.347, D4: 1.653 },
    computed: { d2: 3.471827, d3: 0.756211, c4: 0.982316, A2: 0.223109, A3: 0.788541, B3: 0.4282, B4: 1.5718, B5: 0.420627, B6: 1.544005, D1: 1.203193, D2: 5.740461, D3: 0.346559, D4: 1.653441 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-16', subgroupSize: 16,
    published: { A2: 0.212, A3: 0.763, c4: 0.9835, inverseC4: 1.0168, B3: 0.448, B4: 1.552, B5: 0.44, B6: 1.526, d2: 3.532, inverseD2: 0.2831, d3: 0.75, D3: 0.363, D4: 1.637 },
    computed: { d2: 3.531983, d3: 0.749908, c4: 0.983484, A2: 0.212345, A3: 0.762595, B3: 0.447888, B4: 1.552112, B5: 0.440491, B6: 1.526476, D1: 1.282259, D2: 5.781707, D3: 0.363042, D4: 1.636958 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-17', subgroupSize: 17,
    published: { A2: 0.203, A3: 0.739, c4: 0.9845, inverseC4: 1.0157, B3: 0.466, B4: 1.534, B5: 0.458, B6: 1.511, d2: 3.588, inverseD2: 0.2787, d3: 0.744, D3: 0.378, D4: 1.622 },
    computed: { d2: 3.587884, d3: 0.744052, c4: 0.984506, A2: 0.202796, A3: 0.739058, B3: 0.465676, B4: 1.534324, B5: 0.458461, B6: 1.510552, D1: 1.355729, D2: 5.820039, D3: 0.377863, D4: 1.622137 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-18', subgroupSize: 18,
    published: { A2: 0.194, A3: 0.718, c4: 0.9854, inverseC4: 1.0148, B3: 0.482, B4: 1.518, B5: 0.475, B6: 1.496, d2: 3.64, inverseD2: 0.2747, d3: 0.739, D3: 0.391, D4: 1.608 },
    computed: { d2: 3.640064, d3: 0.738591, c4: 0.98541, A2: 0.194257, A3: 0.717576, B3: 0.481849, B4: 1.518151, B5: 0.474819, B6: 1.496001, D1: 1.424291, D2: 5.855836, D3: 0.391282, D4: 1.608718 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-19', subgroupSize: 19,
    published: { A2: 0.187, A3: 0.698, c4: 0.9862, inverseC4: 1.014, B3: 0.497, B4: 1.503, B5: 0.49, B6: 1.483, d2: 3.689, inverseD2: 0.2711, d3: 0.734, D3: 0.403, D4: 1.597 },
    computed: { d2: 3.688963, d3: 0.733481, c4: 0.986214, A2: 0.186569, A3: 0.697868, B3: 0.496638, B4: 1.503362, B5: 0.489792, B6: 1.482636, D1: 1.488519, D2: 5.889408, D3: 0.403506, D4: 1.596494 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-20', subgroupSize: 20,
    published: { A2: 0.18, A3: 0.68, c4: 0.9869, inverseC4: 1.0133, B3: 0.51, B4: 1.49, B5: 0.504, B6: 1.47, d2: 3.735, inverseD2: 0.2677, d3: 0.729, D3: 0.415, D4: 1.585 },
    computed: { d2: 3.73495, d3: 0.728686, c4: 0.986934, A2: 0.179606, A3: 0.679701, B3: 0.510231, B4: 1.489769, B5: 0.503564, B6: 1.470304, D1: 1.548891, D2: 5.921009, D3: 0.414702, D4: 1.585298 },
    source: 'tab-a22', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-21', subgroupSize: 21,
    published: { A2: 0.173, A3: 0.663, c4: 0.9876, B3: 0.523, B4: 1.477, B5: 0.516, B6: 1.459, d2: 3.778, D3: 0.425, D4: 1.575 },
    computed: { d2: 3.778336, d3: 0.724173, c4: 0.987583, A2: 0.173265, A3: 0.662885, B3: 0.522779, B4: 1.477221, B5: 0.516287, B6: 1.458879, D1: 1.605816, D2: 5.950856, D3: 0.425006, D4: 1.574994 },
    source: 'tab-pyz', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-22', subgroupSize: 22,
    published: { A2: 0.167, A3: 0.647, c4: 0.9882, B3: 0.534, B4: 1.466, B5: 0.528, B6: 1.448, d2: 3.819, D3: 4.34e-1, D4: 1.566 },
    computed: { d2: 3.819385, d3: 0.719915, c4: 0.98817, A2: 0.167462, A3: 0.647259, B3: 0.53441, B4: 1.46559, B5: 0.528088, B6: 1.448253, D1: 1.65964, D2: 5.979129, D3: 0.434531, D4: 1.565469 },
    source: 'tab-pyz', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-23', subgroupSize: 23,
    published: { A2: 0.162, A3: 0.633, c4: 0.9887, B3: 0.545, B4: 1.455, B5: 0.539, B6: 1.438, d2: 3.858, D3: 0.443, D4: 1.557 },
    computed: { d2: 3.858323, d3: 0.715887, c4: 0.988705, A2: 0.162128, A3: 0.63269, B3: 0.54523, B4: 1.45477, B5: 0.539071, B6: 1.438338, D1: 1.710663, D2: 6.005984, D3: 0.44337, D4: 1.55663 },
    source: 'tab-pyz', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-24', subgroupSize: 24,
    published: { A2: 0.157, A3: 0.619, c4: 0.9892, B3: 0.555, B4: 1.445, B5: 0.549, B6: 1.429, d2: 3.895, D3: 0.451, D4: 1.548 },
    computed: { d2: 3.895348, d3: 0.712068, c4: 0.989193, A2: 0.157206, A3: 0.619063, B3: 0.55533, B4: 1.44467, B5: 0.549328, B6: 1.429057, D1: 1.759144, D2: 6.031553, D3: 0.451601, D4: 1.548399 },
    source: 'tab-pyz', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
  {
    id: 'subgroup-25', subgroupSize: 25,
    published: { A2: 0.153, A3: 0.606, c4: 0.9896, B3: 0.565, B4: 1.435, B5: 0.559, B6: 1.42, d2: 3.931, D3: 0.459, D4: 1.541 },
    computed: { d2: 3.930629, d3: 0.708441, c4: 0.98964, A2: 0.152647, A3: 0.606281, B3: 0.564786, B4: 1.435214, B5: 0.558935, B6: 1.420346, D1: 1.805307, D2: 6.055952, D3: 0.459292, D4: 1.540708 },
    source: 'tab-pyz', confidence: 'read', evidence: { computed: { source: 'calc', confidence: 'computed' } },
  },
];

export const controlChartFormulas: readonly ControlChartFormula[] = [
  {
    id: 'formula-mean-range', chart: 'mean-range', title: 'X-bar and R', centre: 'grand mean, R-bar',
    limits: 'X: grand mean +- A2 R-bar; R: D3 R-bar, D4 R-bar; sigma = R-bar/d2', source: 'tab-a22',
    confidence: 'read',
  },
  {
    id: 'formula-mean-deviation', chart: 'mean-deviation', title: 'X-bar and s', centre: 'grand mean, s-bar',
    limits: 'X: grand mean +- A3 s-bar; s: B3 s-bar, B4 s-bar; sigma = s-bar/c4', source: 'tab-a22',
    confidence: 'read',
  },
  {
    id: 'formula-individuals', chart: 'individuals', title: 'individuals and moving range',
    centre: 'mean, MR-bar', limits: 'X: mean +- 3 MR-bar/1.128; MR: 0, 3.267 MR-bar', source: 'nist-eh',
    confidence: 'memory',
  },
  {
    id: 'formula-ewma', chart: 'ewma', title: 'EWMA', centre: 'target',
    limits: 'target +- k s sqrt(lambda/(2-lambda)); exact: times sqrt(1-(1-lambda)^(2i))', source: 'nist-eh',
    confidence: 'memory',
  },
  {
    id: 'formula-british-action', chart: 'british-action', title: 'British action limits',
    limits: '+-3.09 sigma/sqrt(n), one in a thousand on each side', sigmaMultiple: 3.09, source: 'bs-309',
    confidence: 'read',
  },
  {
    id: 'formula-british-warning', chart: 'british-warning', title: 'British warning limits',
    limits: '+-1.96 sigma/sqrt(n), one in forty on each side', sigmaMultiple: 1.96, source: 'calc',
    confidence: 'memory',
  },
];

export const runRules: readonly RunRule[] = [
  {
    id: 'weco-1', rule: 'WECO 1', points: 1, outOf: 1, beyondSigma: 3, sameSide: false,
    text: 'one point beyond 3 sigma', source: 'nist-eh', confidence: 'memory',
  },
  {
    id: 'weco-2', rule: 'WECO 2', points: 2, outOf: 3, beyondSigma: 2, sameSide: true,
    text: 'two of three consecutive beyond 2 sigma, same side', source: 'nist-eh', confidence: 'memory',
  },
  {
    id: 'weco-3', rule: 'WECO 3', points: 4, outOf: 5, beyondSigma: 1, sameSide: true,
    text: 'four of five consecutive beyond 1 sigma, same side', source: 'nist-eh', confidence: 'memory',
  },
  {
    id: 'weco-4', rule: 'WECO 4', points: 8, outOf: 8, beyondSigma: 0, sameSide: true,
    text: 'eight consecutive on one side of the centre line', source: 'nist-eh', confidence: 'memory',
  },
];

export const normalQuantiles: readonly NormalQuantileRow[] = [
  {
    id: 'quantile-0-9', probability: 0.9, quantile: 1.281552, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-95', probability: 0.95, quantile: 1.644854, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-975', probability: 0.975, quantile: 1.959964, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-98', probability: 0.98, quantile: 2.053749, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-99', probability: 0.99, quantile: 2.326348, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-995', probability: 0.995, quantile: 2.575829, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-999', probability: 0.999, quantile: 3.090232, source: 'calc', confidence: 'computed',
  },
  {
    id: 'quantile-0-9999', probability: 0.9999, quantile: 3.719016, source: 'calc', confidence: 'computed',
  },
];

export const studentQuantiles: readonly StudentQuantileRow[] = [
  {
    id: 'student-1', degreesOfFreedom: 1,
    quantiles: { '0.95': 6.3138, '0.975': 12.7062, '0.99': 31.8205, '0.995': 63.6567 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-2', degreesOfFreedom: 2,
    quantiles: { '0.95': 2.92, '0.975': 4.3027, '0.99': 6.9646, '0.995': 9.9248 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-3', degreesOfFreedom: 3,
    quantiles: { '0.95': 2.3534, '0.975': 3.1824, '0.99': 4.5407, '0.995': 5.8409 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-4', degreesOfFreedom: 4,
    quantiles: { '0.95': 2.1318, '0.975': 2.7764, '0.99': 3.7469, '0.995': 4.6041 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-5', degreesOfFreedom: 5,
    quantiles: { '0.95': 2.015, '0.975': 2.5706, '0.99': 3.3649, '0.995': 4.0321 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-6', degreesOfFreedom: 6,
    quantiles: { '0.95': 1.9432, '0.975': 2.4469, '0.99': 3.1427, '0.995': 3.7074 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-7', degreesOfFreedom: 7,
    quantiles: { '0.95': 1.8946, '0.975': 2.3646, '0.99': 2.998, '0.995': 3.4995 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-8', degreesOfFreedom: 8,
    quantiles: { '0.95': 1.8595, '0.975': 2.306, '0.99': 2.8965, '0.995': 3.3554 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-9', degreesOfFreedom: 9,
    quantiles: { '0.95': 1.8331, '0.975': 2.2622, '0.99': 2.8214, '0.995': 3.2498 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-10', degreesOfFreedom: 10,
    quantiles: { '0.95': 1.8125, '0.975': 2.2281, '0.99': 2.7638, '0.995': 3.1693 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-11', degreesOfFreedom: 11,
    quantiles: { '0.95': 1.7959, '0.975': 2.201, '0.99': 2.7181, '0.995': 3.1058 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-12', degreesOfFreedom: 12,
    quantiles: { '0.95': 1.7823, '0.975': 2.1788, '0.99': 2.681, '0.995': 3.0545 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-13', degreesOfFreedom: 13,
    quantiles: { '0.95': 1.7709, '0.975': 2.1604, '0.99': 2.6503, '0.995': 3.0123 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-14', degreesOfFreedom: 14,
    quantiles: { '0.95': 1.7613, '0.975': 2.1448, '0.99': 2.6245, '0.995': 2.9768 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-15', degreesOfFreedom: 15,
    quantiles: { '0.95': 1.7531, '0.975': 2.1314, '0.99': 2.6025, '0.995': 2.9467 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-16', degreesOfFreedom: 16,
    quantiles: { '0.95': 1.7459, '0.975': 2.1199, '0.99': 2.5835, '0.995': 2.9208 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-17', degreesOfFreedom: 17,
    quantiles: { '0.95': 1.7396, '0.975': 2.1098, '0.99': 2.5669, '0.995': 2.8982 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-18', degreesOfFreedom: 18,
    quantiles: { '0.95': 1.7341, '0.975': 2.1009, '0.99': 2.5524, '0.995': 2.8784 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-19', degreesOfFreedom: 19,
    quantiles: { '0.95': 1.7291, '0.975': 2.093, '0.99': 2.5395, '0.995': 2.8609 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-20', degreesOfFreedom: 20,
    quantiles: { '0.95': 1.7247, '0.975': 2.086, '0.99': 2.528, '0.995': 2.8453 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-21', degreesOfFreedom: 21,
    quantiles: { '0.95': 1.7207, '0.975': 2.0796, '0.99': 2.5176, '0.995': 2.8314 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-22', degreesOfFreedom: 22,
    quantiles: { '0.95': 1.7171, '0.975': 2.0739, '0.99': 2.5083, '0.995': 2.8188 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-23', degreesOfFreedom: 23,
    quantiles: { '0.95': 1.7139, '0.975': 2.0687, '0.99': 2.4999, '0.995': 2.8073 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-24', degreesOfFreedom: 24,
    quantiles: { '0.95': 1.7109, '0.975': 2.0639, '0.99': 2.4922, '0.995': 2.7969 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-25', degreesOfFreedom: 25,
    quantiles: { '0.95': 1.7081, '0.975': 2.0595, '0.99': 2.4851, '0.995': 2.7874 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-26', degreesOfFreedom: 26,
    quantiles: { '0.95': 1.7056, '0.975': 2.0555, '0.99': 2.4786, '0.995': 2.7787 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-27', degreesOfFreedom: 27,
    quantiles: { '0.95': 1.7033, '0.975': 2.0518, '0.99': 2.4727, '0.995': 2.7707 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-28', degreesOfFreedom: 28,
    quantiles: { '0.95': 1.7011, '0.975': 2.0484, '0.99': 2.4671, '0.995': 2.7633 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-29', degreesOfFreedom: 29,
    quantiles: { '0.95': 1.6991, '0.975': 2.0452, '0.99': 2.462, '0.995': 2.7564 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-30', degreesOfFreedom: 30,
    quantiles: { '0.95': 1.6973, '0.975': 2.0423, '0.99': 2.4573, '0.995': 2.75 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-31', degreesOfFreedom: 31,
    quantiles: { '0.95': 1.6955, '0.975': 2.0395, '0.99': 2.4528, '0.995': 2.744 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-39', degreesOfFreedom: 39,
    quantiles: { '0.95': 1.6849, '0.975': 2.0227, '0.99': 2.4258, '0.995': 2.7079 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-47', degreesOfFreedom: 47,
    quantiles: { '0.95': 1.6779, '0.975': 2.0117, '0.99': 2.4083, '0.995': 2.6846 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-49', degreesOfFreedom: 49,
    quantiles: { '0.95': 1.6766, '0.975': 2.0096, '0.99': 2.4049, '0.995': 2.68 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-59', degreesOfFreedom: 59,
    quantiles: { '0.95': 1.6711, '0.975': 2.001, '0.99': 2.3912, '0.995': 2.6618 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-79', degreesOfFreedom: 79,
    quantiles: { '0.95': 1.6644, '0.975': 1.9905, '0.99': 2.3745, '0.995': 2.6395 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-99', degreesOfFreedom: 99,
    quantiles: { '0.95': 1.6604, '0.975': 1.9842, '0.99': 2.3646, '0.995': 2.6264 }, source: 'calc',
    confidence: 'computed',
  },
  {
    id: 'student-124', degreesOfFreedom: 124,
    quantiles: { '0.95': 1.6572, '0.975': 1.9793, '0.99': 2.3568, '0.995': 2.6161 }, source: 'calc',
    confidence: 'computed',
  },
];

export const toleranceFactors: readonly ToleranceFactorRow[] = [
  {
    id: 'tolerance-5', sampleSize: 5, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 4.2027, '0.975': 4.9085, '0.99': 5.7411, '0.9999': 8.966 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-6', sampleSize: 6, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 3.7077, '0.975': 4.3291, '0.99': 5.062, '0.9999': 7.9005 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-7', sampleSize: 7, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 3.3995, '0.975': 3.9696, '0.99': 4.6417, '0.9999': 7.2441 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-8', sampleSize: 8, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 3.1873, '0.975': 3.7228, '0.99': 4.3539, '0.9999': 6.7962 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-9', sampleSize: 9, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 3.0312, '0.975': 3.5417, '0.99': 4.143, '0.9999': 6.4693 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-10', sampleSize: 10, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.911, '0.975': 3.4025, '0.99': 3.9811, '0.9999': 6.2189 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-12', sampleSize: 12, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.7363, '0.975': 3.2007, '0.99': 3.7471, '0.9999': 5.8582 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-15', sampleSize: 15, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.566, '0.975': 3.0046, '0.99': 3.5201, '0.9999': 5.51 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-20', sampleSize: 20, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.396, '0.975': 2.8095, '0.99': 3.2952, '0.9999': 5.1668 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-25', sampleSize: 25, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.2917, '0.975': 2.6903, '0.99': 3.158, '0.9999': 4.9585 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-30', sampleSize: 30, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.2198, '0.975': 2.6083, '0.99': 3.0639, '0.9999': 4.8162 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-40', sampleSize: 40, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.1255, '0.975': 2.501, '0.99': 2.9409, '0.9999': 4.631 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-50', sampleSize: 50, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 2.065, '0.975': 2.4324, '0.99': 2.8624, '0.9999': 4.5131 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
  {
    id: 'tolerance-100', sampleSize: 100, confidenceLevel: 0.95,
    factorByCoverage: { '0.95': 1.9265, '0.975': 2.2758, '0.99': 2.684, '0.9999': 4.2465 },
    formula: 'noncentral t: k = t(conf; n-1, z_p sqrt n)/sqrt n', source: 'calc', confidence: 'computed',
  },
];

export const controlChartSources: readonly ReferenceSource[] = [
  {
    id: 'tab-a22', title: 'Table A.22 Factors for constructing control charts (n 2 to 20)',
    where: 'textbook appendix page, document-sharing copy', read: true,
  },
  {
    id: 'tab-pyz',
    title: 'Control chart factor pages: Pyzdek, The Handbook for Quality Management, appendix (A, A2, A3, c4, B3-B6) and a data-collector manual table (d2, D3, D4) for n 21 to 25',
    where: 'university library copy, page 414; instrument manual page C-7', read: true,
  },
  {
    id: 'bs-309',
    title: 'Note in a public statistics reference manual: American practice 3 sigma (0.27 %), British practice 3.09 sigma (0.20 %)',
    where: 'reference manual, factors for control charts', read: true,
  },
  {
    id: 'nist-eh', title: 'NIST/SEMATECH e-Handbook of Statistical Methods, chapters 6 and 7',
    where: 'itl.nist.gov/div898/handbook', read: false,
  },
  {
    id: 'calc', title: 'Own computation', where: 'this file', read: true,
  },
];
