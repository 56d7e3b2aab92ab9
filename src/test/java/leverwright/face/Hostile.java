package leverwright.face;

import java.util.List;

/** Texts that try to become markup, to steer a terminal or to break a file. */
public final class Hostile {
    public static final List<String> TEXTS = List.of(
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "' onmouseover='alert(1)",
            "</style></title></svg><svg onload=alert(1)>",
            "--><iframe src=https://example.org></iframe><!--",
            "]]><b>",
            "&lt;script&gt; &#60;i&#62; &",
            "javascript:alert(1)",
            "{{7*7}} ${7*7} <%= 7 %>",
            "\u001b[31mred\u001b]0;title\u0007 \u0000 \u009b31m",
            "lone \ud800 half, \uffff, turned \u202e around \u2066",
            "url(https://example.org/x.png)} body{display:none");

    private Hostile() {}

    /** Every hostile text in one line. */
    public static String all() {
        return String.join(" ", TEXTS);
    }
}
