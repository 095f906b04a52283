package thalweg.exchange.table;

import java.util.List;
import java.util.Optional;
import thalweg.exchange.Known;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/** What a database has, as far as a table that comes in has to ask. */
public interface Here extends Known {

    /** The canyon of that name in use, with everything in it. */
    Optional<CanyonRecord> canyon(Uid uid);

    /** The canyons in use that go by that name, whatever its accents and case. */
    List<Uid> canyonsNamed(String name);

    /** The canyon around a thing that is known by that id, in use or not. */
    Optional<Uid> canyonAround(Uid thing);
}
