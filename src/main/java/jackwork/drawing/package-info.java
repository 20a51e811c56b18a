/**
 * Files of outlines and pictures: SVG and PNG are read; SVG, DXF, PDF, 3MF, STL, PNG and QR codes are written.
 *
 * <p>Here y points up and lengths are mm; the formats' own conventions stay inside the readers and
 * writers. May import {@code geometry}. What is read is hostile until parsed: sizes, depths, copies and
 * numbers are bounded, and nothing outside the file is ever fetched.
 *
 * <p>Sources: W3C SVG 1.1 (second edition) and SVG 2; W3C CSS Values and Units 3 for lengths; ISO
 * 32000-1 for PDF, which Apache PDFBox writes.
 */
@NullMarked
package jackwork.drawing;

import org.jspecify.annotations.NullMarked;
