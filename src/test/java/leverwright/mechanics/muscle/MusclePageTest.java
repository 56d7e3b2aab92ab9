package leverwright.mechanics.muscle;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** docs/muscles.md lists every number of the data file with its source and status; run with -Dwrite.pages=true to renew it. */
class MusclePageTest {
    private static final Path PAGE = Path.of("docs", "muscles.md");
    private static final String MARK = "## Every number\n";

    @Test
    void thePageListsEveryNumber() throws IOException {
        String page = Files.readString(PAGE);
        int at = page.indexOf(MARK);
        String wanted = page.substring(0, at) + MARK + table();
        if (Boolean.getBoolean("write.pages")) {
            Files.writeString(PAGE, wanted);
        }
        assertEquals(wanted, Files.readString(PAGE));
    }

    private static String table() {
        MuscleData data = MuscleData.standard();
        StringBuilder text = new StringBuilder("\n| key | source |\n|---|---|\n");
        Set<String> keys = new LinkedHashSet<>();
        for (MuscleData.Row row : data.rows()) {
            if (keys.add(row.source())) {
                text.append("| ")
                        .append(row.source())
                        .append(" | ")
                        .append(data.source(row))
                        .append(" |\n");
            }
        }
        text.append("\n| muscle | about | sex | quantity | at | value | spread | unit | status | source |\n");
        text.append("|---|---|---|---|---|---|---|---|---|---|\n");
        for (MuscleData.Row row : data.rows()) {
            text.append("| ")
                    .append(String.join(
                            " | ",
                            row.muscle().words(),
                            row.axis().toLowerCase(Locale.ROOT).replace('_', ' '),
                            row.sex().toLowerCase(Locale.ROOT),
                            row.quantity().replace('_', ' '),
                            BigDecimal.valueOf(row.at()).stripTrailingZeros().toPlainString(),
                            BigDecimal.valueOf(row.value()).stripTrailingZeros().toPlainString(),
                            BigDecimal.valueOf(row.spread())
                                    .stripTrailingZeros()
                                    .toPlainString(),
                            row.unit(),
                            row.status().words(),
                            row.source()))
                    .append(" |\n");
        }
        return text.toString();
    }
}
