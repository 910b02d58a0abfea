/** Asks the sources over HTTP as they wish to be asked. */
@NullMarked
package drylap.forecasts.fetching;

import org.jspecify.annotations.NullMarked;
