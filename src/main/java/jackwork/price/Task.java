package jackwork.price;

import jackwork.stock.Basis;

/**
 * One operation in a batch.
 *
 * @param what it is, in words
 * @param count how many of it for one piece, or for the batch when it is done once
 * @param each minutes for one of it
 * @param perBatch done once a batch
 * @param minutes of hands for one good piece: what is learnt, spoiled and spread over the batch taken in
 * @param share of all minutes
 * @param basis what its minutes rest on
 */
public record Task(
        String operation,
        String what,
        Stage stage,
        double count,
        double each,
        boolean perBatch,
        boolean learns,
        double minutes,
        double share,
        Basis basis) {

    Task withShare(double all) {
        return new Task(
                operation, what, stage, count, each, perBatch, learns, minutes, all == 0 ? 0 : minutes / all, basis);
    }
}
