/** What each source's bytes mean, and the one table of hours that all of them fill. */
@NullMarked
package drylap.forecasts.formats;

import org.jspecify.annotations.NullMarked;
