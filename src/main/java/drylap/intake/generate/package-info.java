/** Invents job folders of any size for trials and benchmarks, the same bytes for the same seed. */
@NullMarked
package drylap.intake.generate;

import org.jspecify.annotations.NullMarked;
