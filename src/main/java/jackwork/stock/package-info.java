/**
 * What can be bought: coins, sheets, rods, fasteners, and how they rub on each other.
 *
 * <p>Each table is a CSV file among the resources, every row with its source; rows from memory say
 * so. Units: mm, g, g/cm³. Imports nothing of Jackwork. Sources: EU, UK, US and Swiss coin law and
 * mints, EN 315, ISO 7823-1, EN ISO 4032, ISO 7089, friction tables as named in each row.
 */
@NullMarked
package jackwork.stock;

import org.jspecify.annotations.NullMarked;
