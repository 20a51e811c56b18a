package jackwork.app.wire;

/**
 * What goes to the page or comes from it. The page's own types are made from these records (ApiTypes, among the tests),
 * and a test holds the two together.
 */
public interface Payload {}
