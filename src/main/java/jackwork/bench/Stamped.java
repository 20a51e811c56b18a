package jackwork.bench;

/** An entry of the log: a record that says when it was logged, and under which key. */
public interface Stamped {

    Stamp stamp();
}
