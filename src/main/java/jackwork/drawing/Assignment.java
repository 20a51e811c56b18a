package jackwork.drawing;

import java.util.Arrays;

/**
 * Pairs rows with columns so that the sum of costs is least: the Hungarian method by shortest augmenting paths, with
 * prices u of rows and v of columns (Kuhn 1955; Jonker and Volgenant 1987), O(rows² · columns).
 */
final class Assignment {

    private Assignment() {}

    /**
     * @param costs [rows × columns], finite
     * @param alone what it costs to leave a row without a column
     * @return the column of each row, −1 for none
     */
    static int[] of(double[][] costs, double alone) {
        int rows = costs.length;
        int columns = rows == 0 ? 0 : costs[0].length;
        // Every row may go to a column of its own that means "none".
        int all = columns + rows;
        double[] u = new double[rows + 1];
        double[] v = new double[all + 1];
        int[] rowOf = new int[all + 1];
        int[] way = new int[all + 1];
        for (int row = 1; row <= rows; row++) {
            rowOf[0] = row;
            int column = 0;
            double[] least = new double[all + 1];
            boolean[] done = new boolean[all + 1];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            do {
                done[column] = true;
                int here = rowOf[column];
                double step = Double.POSITIVE_INFINITY;
                int next = 0;
                for (int j = 1; j <= all; j++) {
                    if (done[j]) {
                        continue;
                    }
                    double cost = cost(costs, columns, here - 1, j - 1, alone) - u[here] - v[j];
                    if (cost < least[j]) {
                        least[j] = cost;
                        way[j] = column;
                    }
                    if (least[j] < step) {
                        step = least[j];
                        next = j;
                    }
                }
                for (int j = 0; j <= all; j++) {
                    if (done[j]) {
                        u[rowOf[j]] += step;
                        v[j] -= step;
                    } else {
                        least[j] -= step;
                    }
                }
                column = next;
            } while (rowOf[column] != 0);
            for (int j = column; j != 0; j = way[j]) {
                rowOf[j] = rowOf[way[j]];
            }
        }
        int[] columnOf = new int[rows];
        Arrays.fill(columnOf, -1);
        for (int j = 1; j <= columns; j++) {
            if (rowOf[j] != 0) {
                columnOf[rowOf[j] - 1] = j - 1;
            }
        }
        return columnOf;
    }

    private static double cost(double[][] costs, int columns, int row, int column, double alone) {
        return column < columns ? costs[row][column] : alone;
    }
}
