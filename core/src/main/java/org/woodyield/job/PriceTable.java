package org.woodyield.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.work.InputValue;
import org.woodyield.work.WorkInput;

/** Reads what bought lumber costs, with ranges of one kind: the prices of a table move together. */
final class PriceTable {

    private static final String SIZE = "size";
    private static final String WOOD = "wood";
    private static final String PRICE = "price";
    private static final String ANY = "any";

    static final List<Table.Column> COLUMNS =
            List.of(Table.Column.required(SIZE), Table.Column.required(WOOD), Table.Column.required(PRICE));

    private PriceTable() {}

    static List<Price> read(List<Table.Row> rows) {
        List<Price> prices = new ArrayList<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Table.Row row : rows) {
            Cell sizeCell = row.cell(SIZE);
            boolean any = sizeCell.text().equalsIgnoreCase(ANY);
            Optional<Size> size = any ? Optional.empty() : Sizes.size(sizeCell);
            Optional<Wood> wood = Woods.read(row.cell(WOOD));
            Optional<InputValue> price = WorkReader.readWithRange(row.cell(PRICE), WorkInput.LUMBER_PRICE);
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
            Price read =
                    new Price(size, wood.get(), price.get().value(), price.get().spread());
            if (prices.stream().allMatch(read::movesWith)) {
                prices.add(read);
            } else {
                row.cell(PRICE)
                        .refuse(
                                "a range written as those of the rows before it: the prices move together",
                                "write every range of this table in one of the ways 780 (690 to 880) per mbf,"
                                        + " 690 to 880 per mbf, 780 per mbf +- 5 %");
            }
        }
        return List.copyOf(prices);
    }
}
