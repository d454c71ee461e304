/**
 * How long the inner computations take, measured with JMH. Not shipped, and no test: a figure belongs to the machine
 * that it was measured on, which is named beside it.
 *
 * <pre>mvn -Pbench -pl timing -am package -Dmaven.test.skip=true
 * java -jar timing/target/timing.jar</pre>
 */
@NullMarked
package landfall.timing;

import org.jspecify.annotations.NullMarked;
