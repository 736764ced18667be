package org.woodyield.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Domain;
import org.woodyield.plan.JobInput.Price;

/** Reads what bought lumber costs. */
final class PriceTable {

    private static final String SIZE = "size";
    private static final String WOOD = "wood";
    private static final String PRICE = "price";
    private static final String ANY = "any";

    static final List<Table.Column> COLUMNS =
            List.of(Table.Column.required(SIZE), Table.Column.required(WOOD), Table.Column.required(PRICE));

    private static final Domain PRICES = Domain.of("price", "per board foot", 0, 1e6);

    private PriceTable() {}

    static List<Price> read(List<Table.Row> rows) {
        List<Price> prices = new ArrayList<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Table.Row row : rows) {
            Cell sizeCell = row.cell(SIZE);
            boolean any = sizeCell.text().equalsIgnoreCase(ANY);
            Optional<Size> size = any ? Optional.empty() : Sizes.size(sizeCell);
            Optional<Wood> wood = Woods.read(row.cell(WOOD));
            Optional<Double> price = row.cell(PRICE).rate(Units.BOARD_FEET, PRICES);
            if ((!any && size.isEmpty()) || wood.isEmpty() || price.isEmpty()) {
                continue;
            }
            Integer earlier = lines.putIfAbsent(
                    size.map(Size::words).orElse(ANY) + ", " + wood.get().words(), row.line());
            if (earlier != null) {
                sizeCell.refuse(
                        "each size once for each wood",
                        "it stands in line " + earlier + " already; remove one of the two");
                continue;
            }
            prices.add(new Price(size, wood.get(), price.get()));
        }
        return List.copyOf(prices);
    }
}
