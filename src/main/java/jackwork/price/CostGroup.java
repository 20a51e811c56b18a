package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What all lines of one group come to, as they are shown: groups add up to the floor as lines do. */
public record CostGroup(String group, BigDecimal amount) {

    static List<CostGroup> of(List<CostLine> lines) {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        lines.forEach(line -> sums.merge(line.group(), line.amount(), BigDecimal::add));
        List<CostGroup> groups = new ArrayList<>();
        sums.forEach((group, amount) -> groups.add(new CostGroup(group, amount)));
        return groups;
    }
}
