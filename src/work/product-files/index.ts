import type { UseCases } from '../use-case.ts';
import { getAssessorZip } from './assessor-zip.ts';
import { fileUnderHeading, getAttachment, takeFileOut } from './attachments.ts';
import { getNotification } from './get-notification.ts';
import { listPointsOfDeparture, savePointOfDeparture } from './points-of-departure.ts';
import { getProductFile, getProductFilePdf, getProductFileZip } from './product-file-papers.ts';
import { getReportChanges, getReportChangesPdf } from './report-changes.ts';
import { saveProductFile } from './save-product-file.ts';
import { getWorksheet, getWorksheetPdf } from './worksheet.ts';

export const productFileUseCases = {
  getProductFile,
  saveProductFile,
  getProductFilePdf,
  getProductFileZip,
  fileUnderHeading,
  takeFileOut,
  getAttachment,
  getNotification,
  listPointsOfDeparture,
  savePointOfDeparture,
  getWorksheet,
  getWorksheetPdf,
  getAssessorZip,
  getReportChanges,
  getReportChangesPdf,
} satisfies UseCases<
  | 'getProductFile'
  | 'saveProductFile'
  | 'getProductFilePdf'
  | 'getProductFileZip'
  | 'fileUnderHeading'
  | 'takeFileOut'
  | 'getAttachment'
  | 'getNotification'
  | 'listPointsOfDeparture'
  | 'savePointOfDeparture'
  | 'getWorksheet'
  | 'getWorksheetPdf'
  | 'getAssessorZip'
  | 'getReportChanges'
  | 'getReportChangesPdf'
>;
