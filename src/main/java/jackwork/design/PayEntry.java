package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that money depends on; what is absent is guessed, by the list of {@link jackwork.stock.PayNumbers}.
 *
 * @param wage what an hour of the maker's hands earns, before on-costs
 * @param onCosts insurance, pension, holidays on top of it, percent
 * @param productive share of the paid time that goes into pieces, percent
 * @param overhead room, insurance, small tools for an hour at work
 * @param profit share of the maker's net price kept beyond the wage, percent
 * @param energy a kilowatt-hour
 * @param offcut share of its price that a kept rest of a sheet is worth, percent
 * @param prices as paid, by the names of the bill, or by kind: {@code sheet}, {@code rod}, {@code cord},
 *     {@code filament}, {@code glue}, {@code fastener}, {@code weight}, {@code paper}, {@code paint}, {@code cloth},
 *     {@code carton}
 * @param bands what people pay, lowest first
 */
@About("Wages, machines, prices, taxes, channels and other ways of selling.")
public record PayEntry(
        @Unit("1") @Nullable Uncertain wage,
        @Unit("%") @Nullable Uncertain onCosts,
        @Unit("%") @Nullable Uncertain productive,
        @Unit("1") @Nullable Uncertain overhead,
        @Unit("%") @Nullable Uncertain profit,
        @Unit("1") @Nullable Uncertain energy,
        @Unit("%") @Nullable Uncertain offcut,
        @Nullable LearningEntry learning,
        @Nullable LaserPayEntry laser,
        @Nullable PrinterPayEntry printer,
        Map<String, StockPriceEntry> prices,
        @Nullable VatEntry vat,
        @Nullable YieldsEntry yields,
        @Nullable DesignTimeEntry design,
        @Nullable ChannelsEntry channels,
        List<BandEntry> bands,
        @Nullable WaysEntry ways,
        @Nullable QuickerEntry quicker) {

    /** One that says nothing. */
    public static final PayEntry NOTHING = new PayEntry(
            null, null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, null, List.of(),
            null, null);
}
