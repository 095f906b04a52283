package thalweg.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UidTest {

    /** The example of RFC 9562, appendix A.6: 1645557742000 ms, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F. */
    @Test
    void aThingsNameIsTheExampleOfRfc9562() {
        Uid uid = Uid.minted(1_645_557_742_000L, new UUID(0xFFFF_FFFF_FFFF_FCC3L, 0xD8C4_DC0C_0C07_398FL));

        assertThat(uid.text()).isEqualTo("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    }

    @Test
    void versionAndVariantAreThoseOfRfc9562WhateverTheChance() {
        Random random = new Random(9562);
        for (int i = 0; i < 2_000; i++) {
            UUID thing = Uid.minted(random.nextLong() >>> 16, new UUID(random.nextLong(), random.nextLong()))
                    .value();
            UUID fact = Uid.of(Hash.of("fact " + i)).value();

            assertThat(thing.version()).isEqualTo(7);
            assertThat(thing.variant()).isEqualTo(2);
            assertThat(fact.version()).isEqualTo(8);
            assertThat(fact.variant()).isEqualTo(2);
        }
    }

    @Test
    void aFactsNameKeepsEveryOtherBitOfItsHash() {
        Uid uid = Uid.of(new Hash("f".repeat(64)));

        assertThat(uid.text()).isEqualTo("ffffffff-ffff-8fff-bfff-ffffffffffff");
        assertThat(Uid.of(new Hash("0".repeat(64))).text()).isEqualTo("00000000-0000-8000-8000-000000000000");
    }

    @Test
    void textAndBytesLeadBack() {
        Uid uid = Uid.minted(1_700_000_000_000L, UUID.fromString("ffffffff-ffff-ffff-ffff-ffffffffffff"));

        assertThat(Uid.parse(" " + uid.text().toUpperCase(java.util.Locale.ROOT) + "\n"))
                .contains(uid);
        assertThat(Uid.ofBytes(uid.bytes())).isEqualTo(uid);
        assertThat(HexFormat.of().formatHex(uid.bytes())).isEqualTo(uid.text().replace("-", ""));
        assertThat(uid.tail()).isEqualTo("ffffffff");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "1-1-1-1-1",
                "017f22e279b07cc398c4dc0c0c07398f",
                "017f22e2-79b0-7cc3-98c4-dc0c0c07398",
                "{017f22e2-79b0-7cc3-98c4-dc0c0c07398f}",
                "017f22e2-79b0-7cc3-98c4-dc0c0c07398g"
            })
    void otherTextsAreNoName(String text) {
        assertThat(Uid.parse(text)).isEmpty();
    }

    /** SQLite compares blobs byte by byte without sign; Java's own order of UUIDs is signed. */
    @Test
    void namesSortAsTheirBytesDo() {
        Random random = new Random(7);
        List<Uid> uids = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            uids.add(new Uid(new UUID(random.nextLong(), random.nextLong())));
        }

        List<Uid> byName = uids.stream().sorted().toList();
        List<Uid> byBytes = uids.stream()
                .sorted(Comparator.comparing(uid -> HexFormat.of().formatHex(uid.bytes())))
                .toList();

        assertThat(byName).isEqualTo(byBytes);
        assertThat(Uid.minted(1, new UUID(0, 0))).isLessThan(Uid.minted(2, new UUID(0, 0)));
    }
}
