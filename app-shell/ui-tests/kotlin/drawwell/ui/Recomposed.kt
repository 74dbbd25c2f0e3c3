package drawwell.ui

import androidx.compose.runtime.Composer
import androidx.compose.runtime.CompositionTracer
import androidx.compose.runtime.InternalComposeTracingApi

/**
 * Counts how often each composable of ours is run. The compiler leaves a mark in every one that is not skipped, for
 * tracing tools; nothing in the app knows that it is counted.
 */
@OptIn(InternalComposeTracingApi::class)
internal class Recomposed private constructor() : CompositionTracer {
    private val counts = sortedMapOf<String, Int>()

    override fun isTraceInProgress() = true

    /** `info` reads `drawwell.ui.parts.Words (Words.kt:24)`; what is within a composable counts as a part of it. */
    override fun traceEventStart(key: Int, dirty1: Int, dirty2: Int, info: String) {
        val name = info.substringBefore(" (")
        if (name.startsWith(OURS) && !name.endsWith(WITHIN)) counts.merge(name.substringAfterLast('.'), 1, Int::plus)
    }

    override fun traceEventEnd() = Unit

    companion object {
        private const val OURS = "drawwell.ui."
        private const val WITHIN = ".<anonymous>"

        fun during(deed: () -> Unit): Map<String, Int> {
            val counted = Recomposed()
            Composer.setTracer(counted)
            try {
                deed()
            } finally {
                Composer.setTracer(null)
            }
            return counted.counts
        }
    }
}
