package drylap.whatif;

import drylap.planning.JobFolder;

/** One thing that would be otherwise. */
public sealed interface Change permits AddCrew, DropDay, DelayDelivery, OtherRain, RainByPercent, OtherForecast {
    /**
     * A copy of the folder in which it is so; nothing else differs.
     *
     * @throws IllegalArgumentException where the folder has nothing that the change speaks of
     */
    JobFolder applyTo(JobFolder folder);
}
