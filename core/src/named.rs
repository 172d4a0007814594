//! Enumerations whose values have a written name, each value listed once.

macro_rules! named {
    ($(#[$doc:meta])* $vis:vis enum $name:ident {
        $($(#[$item_doc:meta])* $item:ident = $id:literal,)*
    }) => {
        $(#[$doc])*
        $vis enum $name { $($(#[$item_doc])* $item),* }

        impl $name {
            /// Every one, in the order of their list.
            $vis const ALL: [Self; [$($id),*].len()] = [$(Self::$item),*];

            /// Its name as files and databases have it; it never changes.
            #[must_use]
            $vis fn id(self) -> &'static str {
                match self { $(Self::$item => $id),* }
            }

            /// The one of this name.
            #[must_use]
            $vis fn from_id(id: &str) -> Option<Self> {
                Self::ALL.into_iter().find(|one| one.id() == id)
            }
        }
    };
}
pub(crate) use named;
