package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param visitors who come past
 * @param give of them who give, percent
 * @param gift a mean gift
 * @param coins in a gift
 * @param uptime of the time that it works, percent
 * @param host of the takings that the host keeps, percent
 * @param banking of the takings for paying coins in, percent
 * @param theft of the takings that is stolen, percent
 * @param plainGive of visitors who give to a plain box, percent
 * @param plainGift a mean gift to a plain box
 * @param fee paid to the maker, a month: hire or sponsorship
 * @param visits by the maker, as agreed
 * @param visit travel for a visit
 * @param visitMinutes a visit, minutes
 * @param counting counting at each visit, minutes
 * @param repairs a month
 * @param loss chance in a month that the piece is stolen or wrecked, percent
 * @param heap that it holds before the heap reaches the bucket; the design's own replaces it
 */
@About("Placed with a charity, for a fee or a sponsor.")
public record CharityEntry(
        @Unit("1") @Nullable Uncertain visitors,
        @Unit("%") @Nullable Uncertain give,
        @Unit("1") @Nullable Uncertain gift,
        @Unit("1") @Nullable Uncertain coins,
        @Unit("%") @Nullable Uncertain uptime,
        @Unit("%") @Nullable Uncertain host,
        @Unit("%") @Nullable Uncertain banking,
        @Unit("%") @Nullable Uncertain theft,
        @Unit("%") @Nullable Uncertain plainGive,
        @Unit("1") @Nullable Uncertain plainGift,
        @Unit("1") @Nullable Uncertain fee,
        @Unit("1") @Nullable Uncertain visits,
        @Unit("1") @Nullable Uncertain visit,
        @Unit("min") @Nullable Uncertain visitMinutes,
        @Unit("min") @Nullable Uncertain counting,
        @Unit("1") @Nullable Uncertain repairs,
        @Unit("%") @Nullable Uncertain loss,
        @Unit("1") @Nullable Uncertain heap) {}
