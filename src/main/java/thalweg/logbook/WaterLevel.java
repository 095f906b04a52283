package thalweg.logbook;

/** How much water there was, against what is usual for the canyon. */
public enum WaterLevel {
    DRY,
    LOW,
    NORMAL,
    HIGH,
    FLOOD
}
