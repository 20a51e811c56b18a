package jackwork.app.wire;

/**
 * Why a request was not answered, and what to do.
 *
 * @param problem what was wrong
 * @param remedy what to do instead
 */
public record Refusal(String problem, String remedy) implements Payload {

    public String json() {
        return Json.compact(this);
    }
}
