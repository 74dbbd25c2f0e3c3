package drawwell.desktop.pictures

import java.io.File
import kotlin.math.PI
import kotlin.math.cos

/** What a digital manometer might have written down: light and quick at first, then deep and slow, with a moment lost. */
internal object InventedTrace {
    private const val A_SECOND = 25
    private const val LONG = 150
    private const val SWITCHED = 50.0

    fun write(file: File) = file.writeText(
        buildString {
            appendLine("seconds,mmHg")
            (0 until LONG * A_SECOND).map { it / A_SECOND.toDouble() }.filterNot { it in 96.0..101.0 }.forEach { at ->
                val (deep, seconds) = if (at < SWITCHED) 120 to 0.6 else 245 to 1.1
                appendLine("%.2f,%.1f".format(java.util.Locale.ROOT, at, 20 + (deep - 20) * (1 - cos(2 * PI * at / seconds)) / 2))
            }
        },
    )
}
