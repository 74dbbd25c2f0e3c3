package drawwell.ui

import drawwell.surface.Trouble

/** What could not be done, in words, and the field it is about. */
data class Told(
    val field: String,
    val what: String,
    val whatToDo: String,
    /** Whether it asks for care, or only tells. */
    val cares: Boolean = true,
) {
    companion object {
        /** Puts any failure of a call into words; none of them closes the app. */
        fun of(failure: Throwable): Told = when (failure) {
            is Trouble.Told -> Told(failure.field, failure.what, failure.whatToDo)
            is LinkageError -> Told("", LastWords.NO_CORE, LastWords.NO_CORE_WHAT_TO_DO)
            else -> Told("", LastWords.WHAT, LastWords.WHAT_TO_DO)
        }
    }
}
