package drawwell.ui.pictures

import kotlin.math.abs

/** Whether a picture that a page shows is older than its screen. */
object Older {
    private const val BYTE = 0xFF
    private const val CLEARLY = 64
    private const val A_LETTER = 20

    /** Dots as ARGB. As little as a letter is; softer edges of another machine are no difference. */
    fun than(kept: IntArray, fresh: IntArray): Boolean =
        kept.size != fresh.size || kept.indices.count { differ(kept[it], fresh[it]) } > A_LETTER

    private fun differ(one: Int, other: Int) =
        listOf(0, 8, 16).any { shift -> abs((one shr shift and BYTE) - (other shr shift and BYTE)) > CLEARLY }
}
