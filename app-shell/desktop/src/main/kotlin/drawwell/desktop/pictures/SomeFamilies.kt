package drawwell.desktop.pictures

import drawwell.desktop.LookAroundRecord
import drawwell.desktop.Moments
import drawwell.surface.Clock
import java.io.File
import java.time.Instant
import java.time.ZoneId
import java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME

/** Six families that are invented: one with months in its record, five with a few days, each with a story of its own. */
internal class SomeFamilies(private val folder: File, private val now: Clock) {
    /** What each of them hands over, sealed for a card. */
    fun shared(card: String): List<File> = listOf(
        family(card, LONG, hours = 0.0) { bringsIn(LookAroundRecord.bundled("family.jsonl").decodeToString()) },
        family(card, "Jun and the twins", hours = 60.0) { expresses(19, 0.4f, 0.5f) },
        family(card, "Ida Brandt", hours = 50.0) {
            expresses(16, 0.5f, 0.4f)
            notices("fainting-yes")
        },
        family(card, "Noor", hours = 40.0) {
            expresses(12, 0.3f, 0.35f)
            notices("shivering-yes")
        },
        family(card, "Tamsin Vale", hours = 45.0) {
            bringsIn(weakPump())
            expresses(14, 0.6f, 0.5f)
        },
        family(card, "Aiko and Per", hours = 120.0) {
            expresses(9, 0.4f, 0.4f)
        },
    )

    /** What a family hands over that has no card: sealed with a passphrase. */
    fun sealed(name: String): File = SomeFamily(folder.resolve(name), name, now.unixMilliseconds, now.zone).use {
        it.expresses(2, 0.4f, 0.4f)
        it.seals("otter plum kite anchor")
    }

    /** Begins so many hours before the present, and shares at the present. */
    private fun family(card: String, name: String, hours: Double, lives: SomeFamily.() -> Unit): File {
        val begun = now.unixMilliseconds - (hours * 3_600_000).toLong()
        return SomeFamily(folder.resolve(name), name, begun, now.zone).use {
            it.lives()
            it.until(now)
            it.shares(card)
        }
    }

    /** A pump of hospital grade that pulls 170 mmHg at three readings. */
    private fun weakPump(): String {
        val at = """"at":"${Instant.ofEpochMilli(now.unixMilliseconds - BEFORE).atZone(ZoneId.of(now.zone)).format(ISO_OFFSET_DATE_TIME)}","zone":"${now.zone}""""
        // A reading says its moment beside its other members, a fact in one of its own.
        val reading = """{$at,"side":"left","vacuum":{"value":170,"unit":"mm[Hg]"}}"""
        return """
            {"fact":"pump","id":"p","name":"Marl","grade":"hospital"}
            {"fact":"gauge","id":"g","name":"Bag","span":{"value":450,"unit":"mm[Hg]"},"accuracy_class":"0.1"}
            {"fact":"check","id":"c","at":{$at},"pump":"p","gauge":"g","readings":{"000":$reading,"001":$reading,"002":$reading}}
        """.trimIndent() + "\n"
    }

    companion object {
        const val LONG = "Mara Lindqvist"

        /** Four days, in milliseconds: earlier than any of their records begins. */
        private const val BEFORE = 4 * 86_400_000L

        /** The moment of the invented family. */
        fun present(): Clock = Moments.read(LookAroundRecord.bundled("family.clock").decodeToString()).let {
            Clock(it.toInstant().toEpochMilli(), it.zone.id)
        }
    }
}
